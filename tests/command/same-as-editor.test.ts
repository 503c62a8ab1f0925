import { mkdirSync, readdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-protocol';
import { plansBelow } from '../../server/command/folder';
import type { CheckReport } from '../../server/command/shapes/check';
import { diskDoor } from '../../server/editor/door-disk';
import { Workspace } from '../../server/engine/workspace';
import { Connected } from '../editor/connected';
import { json, Shop } from './shop';

/** Every finding as one line, in an order of its own. */
type Lines = readonly string[];

const severities = ['', 'error', 'warning', 'information'];
type Spot = Pick<CheckReport['findings'][number], 'file' | 'range' | 'message'>;
const spot = ({ file, range: { start, end }, message }: Spot): string =>
  `${file} ${start.line}:${start.character}-${end.line}:${end.character} ${message}`;

async function typed(shop: Shop): Promise<Lines> {
  const { findings } = json(await shop.type('check', '--format', 'json')) as CheckReport;
  return findings
    .map((finding) => [finding.severity, finding.name, spot(finding), ...finding.related.map(spot)].join(' | '))
    .sort();
}

async function published(shop: Shop): Promise<Lines> {
  const root = pathToFileURL(shop.folder).href;
  const fileOf = (uri: string): string => decodeURIComponent(uri.slice(root.length + 1));
  const client = await Connected.start({ makeWorkspace: () => new Workspace(), features: [], ownDoor: diskDoor }, [
    root,
  ]);
  // An open file is answered even where nothing is found in it, so that one knows when all has been said.
  for (const file of plansBelow(shop.folder)) {
    const uri = `${root}/${file.split('/').map(encodeURIComponent).join('/')}`;
    await client.open(uri, shop.read(file));
    await client.diagnostics(uri, ({ version }) => version === 1);
  }
  const newest = new Map<string, readonly Diagnostic[]>();
  for (const { uri, diagnostics } of client.published) newest.set(uri, diagnostics);
  client.stop();
  return [...newest]
    .flatMap(([uri, diagnostics]) =>
      diagnostics.map(({ severity, code, range, message, relatedInformation }) =>
        [
          severities[severity ?? 0],
          code,
          spot({ file: fileOf(uri), range, message }),
          ...(relatedInformation ?? []).map((each) =>
            spot({ file: fileOf(each.location.uri), range: each.location.range, message: each.message }),
          ),
        ].join(' | '),
      ),
    )
    .sort();
}

describe('the command line finds what the editor shows', () => {
  test('in the samples as they are', async () => {
    const shop = Shop.withSamples();
    expect(await typed(shop)).toEqual(await published(shop));
  });

  // Each line of a sample plan is left out in its turn, nine turns at a time in files of their own.
  const samples = Shop.withSamples();
  const plans = readdirSync(samples.folder).filter((file) => /^plan /m.test(samples.read(file)));
  test.each(plans)('in %s with lines left out', async (file) => {
    const shop = Shop.withSamples();
    const lines = shop.read(file).split('\n');
    mkdirSync(shop.path('spoilt'));
    for (let line = 3; line < lines.length; line += 9) {
      const text = lines
        .filter((_, at) => at !== line)
        .join('\n')
        .replace(/^use "/gm, 'use "../');
      shop.write(`spoilt/${line} ü.jobplan`, text);
    }
    const found = await typed(shop);
    expect(found).toEqual(await published(shop));
    expect(found.length).toBeGreaterThan(5);
  });
});
