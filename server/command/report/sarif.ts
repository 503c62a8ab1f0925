import type { Fix, Location, Log, Region, ReportingDescriptor, Result } from 'sarif';
import { version } from '../../../package.json';
import { pageNamed } from '../../engine/checks/pages';
import type { Range } from '../shapes/range';
import type { Reported } from './report';

const levels: Readonly<Record<Reported['severity'], 'error' | 'warning' | 'note'>> = {
  error: 'error',
  warning: 'warning',
  information: 'note',
};

/** Lines and columns count from one; the end column is behind the last character, as in the engine. */
const region = ({ start, end }: Range): Region => ({
  startLine: start.line + 1,
  startColumn: start.character + 1,
  endLine: end.line + 1,
  endColumn: end.character + 1,
});

/** A path from the current folder, or a file address; blanks and the like escaped, as an address asks. */
function address(file: string): string {
  const escaped = file.split('/').map(encodeURIComponent).join('/');
  if (file.startsWith('/')) return `file://${escaped}`;
  return /^[a-z]:\//i.test(file) ? `file:///${escaped}` : escaped;
}

const location = (file: string, range: Range): Location => ({
  physicalLocation: { artifactLocation: { uri: address(file) }, region: region(range) },
});

function ruleOf(name: string): ReportingDescriptor {
  const page = pageNamed(name);
  if (!page) return { id: name };
  return {
    id: name,
    shortDescription: { text: page.title },
    fullDescription: { text: page.meaning },
    help: { text: `${page.meaning}\n\n${page.why}\n\nSource: ${page.source}` },
    defaultConfiguration: { level: levels[page.severity] },
  };
}

function resultOf(finding: Reported, ruleIndex: number): Result {
  return {
    ruleId: finding.name,
    ruleIndex,
    level: levels[finding.severity],
    message: { text: finding.message },
    locations: [location(finding.file, finding.range)],
    ...(finding.related.length > 0 && {
      relatedLocations: finding.related.map(({ file, range, message }, id) => ({
        id,
        message: { text: message },
        ...location(file, range),
      })),
    }),
    ...(finding.fixes.length > 0 && { fixes: finding.fixes.map(fixOf) }),
  };
}

function fixOf({ title, edits }: Reported['fixes'][number]): Fix {
  const files = [...new Set(edits.map(({ file }) => file))];
  return {
    description: { text: title },
    artifactChanges: files.map((file) => ({
      artifactLocation: { uri: address(file) },
      replacements: edits
        .filter((edit) => edit.file === file)
        .map(({ range, text }) => ({ deletedRegion: region(range), insertedContent: { text } })),
    })),
  };
}

/** Findings for code scanning: SARIF 2.1.0 (OASIS standard), columns in UTF-16 units. */
export function sarifLog(findings: readonly Reported[]): Log {
  const names = [...new Set(findings.map(({ name }) => name))].sort();
  return {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'jobplan', version, rules: names.map(ruleOf) } },
        columnKind: 'utf16CodeUnits',
        results: findings.map((finding) => resultOf(finding, names.indexOf(finding.name))),
      },
    ],
  };
}
