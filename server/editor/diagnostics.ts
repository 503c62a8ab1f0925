import {
  type Diagnostic,
  type DiagnosticRelatedInformation,
  DiagnosticSeverity,
  type Range,
} from 'vscode-languageserver';
import type { Finding, Place, Severity } from '../engine/finding';
import { checkPage } from './check-page';
import type { Snapshot } from './engine';
import type { Folder } from './folder';
import { checkScheme } from './protocol';

const severities: Record<Severity, DiagnosticSeverity> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
};

/** The findings of a file as the protocol shows them, at their present places. */
export function diagnosticsOf(
  folder: Folder,
  snapshot: Snapshot,
  findings: readonly Finding[],
  pages = false,
): Diagnostic[] {
  const shown: Diagnostic[] = [];
  for (const finding of findings) {
    const range = rangeOf(folder, snapshot, finding.at);
    if (range === undefined) continue;
    const related: DiagnosticRelatedInformation[] = [];
    for (const { at, message } of finding.related) {
      const place = rangeOf(folder, snapshot, at);
      if (place !== undefined) related.push({ location: { uri: folder.uriOf(at.file), range: place }, message });
    }
    shown.push({
      range,
      severity: severities[finding.severity],
      code: finding.name,
      ...(pages && checkPage(finding.name) !== undefined
        ? { codeDescription: { href: `${checkScheme}:/${finding.name}.md` } }
        : {}),
      source: 'jobplan',
      message: finding.message,
      data: finding.name,
      ...(related.length > 0 ? { relatedInformation: related } : {}),
    });
  }
  return shown;
}

/** A place as lines and characters, or undefined when its file or its item is no longer there. */
export function rangeOf(folder: Folder, snapshot: Snapshot, place: Place): Range | undefined {
  const offset = folder.offsetOf(place, snapshot);
  const lines = folder.document(place.file)?.lines;
  return offset === undefined || lines === undefined ? undefined : lines.range(offset + place.from, offset + place.to);
}
