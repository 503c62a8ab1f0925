import { uncounted } from '../../takeoff/volumes';
import type { Sheet } from './sheet';

/** Names of the parts that nitrogen fills under test and whose volume the plan does not give, in flow order. */
export function uncountedToFill(sheet: Sheet): readonly string[] {
  const filled = new Set<number>();
  for (const { events } of sheet.walk.entries)
    for (const event of events)
      if (event.type === 'pressurises')
        for (const space of event.spaces) for (const part of space.parts) filled.add(part);
  return uncounted(
    sheet.plan,
    [...filled].sort((a, b) => a - b),
  ).map((part) => part.name);
}
