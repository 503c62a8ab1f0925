import { caught, type Mutant, mutants } from './mutate';
import { filesOf, sound } from './plans';

export interface Rate {
  readonly harmful: number;
  readonly found: number;
  readonly harmless: number;
  readonly silent: number;
  readonly survivors: readonly Mutant[];
  readonly alarms: readonly { readonly mutant: Mutant; readonly names: readonly string[] }[];
}

/** Makes every mutant of some folders, and counts what the checks say of them. */
export function rateOf(folders: readonly string[]): Rate {
  const survivors: Mutant[] = [];
  const alarms: { mutant: Mutant; names: readonly string[] }[] = [];
  let harmful = 0;
  let harmless = 0;
  for (const folder of folders) {
    const files = filesOf(folder);
    for (const path of sound(files)) {
      for (const mutant of mutants(files, path)) {
        const names = caught(files, mutant);
        if (mutant.verdict === 'harmful') {
          harmful++;
          if (names.length === 0) survivors.push(mutant);
        } else {
          harmless++;
          if (names.length > 0) alarms.push({ mutant, names });
        }
      }
    }
  }
  return { harmful, found: harmful - survivors.length, harmless, silent: harmless - alarms.length, survivors, alarms };
}
