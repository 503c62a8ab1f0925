import type { Finding } from '../../engine/finding';
import type { Loaded } from '../load';
import type { Standing } from '../places';
import type { ReportedFinding } from '../shapes/check';

/** A finding with its places as people and programs count, and the line that it stands on. */
export interface Reported extends ReportedFinding {
  readonly line: string;
}

export function reported(finding: Finding, { places }: Loaded): Reported {
  const at = (place: Finding['at']): Pick<Standing, 'file' | 'range'> => {
    const { file, range } = places.standing(place);
    return { file, range };
  };
  return {
    name: finding.name,
    severity: finding.severity,
    ...places.standing(finding.at),
    message: finding.message,
    related: finding.related.map((related) => ({ ...at(related.at), message: related.message })),
    fixes: finding.fixes.map(({ title, safe, edits }) => ({
      title,
      safe,
      edits: edits.map((edit) => ({ ...at(edit.at), text: edit.text })),
    })),
  };
}

/** By file, then by place, then the gravest first. */
export function inOrder(findings: readonly Reported[]): readonly Reported[] {
  const gravity = { error: 0, warning: 1, information: 2 } as const;
  return [...findings].sort(
    (a, b) =>
      compareNames(a.file, b.file) ||
      a.range.start.line - b.range.start.line ||
      a.range.start.character - b.range.start.character ||
      gravity[a.severity] - gravity[b.severity] ||
      compareNames(a.name, b.name),
  );
}

const compareNames = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
