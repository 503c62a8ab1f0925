import { z } from 'zod';
import { checkReport } from './check';
import { explainReport } from './explain';
import { figureReport, relationsReport } from './figure';
import { formatReport } from './format';
import { propertiesReport } from './properties';
import { stateReport } from './state';
import { recordTakeoffReport, takeoffReport } from './takeoff';

/** Every shape of JSON that the command line writes, by the name of its schema. */
export const shapes = {
  check: checkReport,
  takeoff: takeoffReport,
  'takeoff-of-record': recordTakeoffReport,
  state: stateReport,
  figure: figureReport,
  relations: relationsReport,
  properties: propertiesReport,
  format: formatReport,
  explain: explainReport,
} as const;

/** The JSON Schemas (draft 2020-12) as published, by file name. */
export function schemaFiles(): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(shapes).map(([name, shape]) => {
      const schema = { ...z.toJSONSchema(shape), title: `jobplan ${name}, version 1` };
      return [`${name}.json`, `${JSON.stringify(schema, null, 2)}\n`];
    }),
  );
}
