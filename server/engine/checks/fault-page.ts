import type { Example } from './define';
import type { Page } from './page';

/** A page of a fault of the text: an error that cannot be accepted, shown by what the sound example says instead. */
export function faultPage(
  name: string,
  title: string,
  meaning: string,
  why: string,
  instead: NonNullable<Example['instead']>,
  more: Partial<Omit<Example, 'instead'>> & {
    readonly severity?: Page['severity'];
    readonly right?: Example['instead'];
  } = {},
): Page {
  const { severity, right, base, ...rest } = more;
  const shared = { base: base ?? 'split', ...rest } as const;
  return {
    name,
    title,
    meaning,
    why,
    severity: severity ?? 'error',
    source: 'how plans are read',
    ground: 'practice',
    acceptable: false,
    wrong: { ...shared, instead },
    right: right ? { ...shared, instead: right } : { base: shared.base },
  };
}
