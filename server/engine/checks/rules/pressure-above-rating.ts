import { spacesOf } from '../../circuit/spaces';
import { weakest } from '../../takeoff/ratings';
import { defineCheck, type Here } from '../define';
import { heldBy, underPressure } from '../plant';
import { gauge } from '../support';
import { insertBefore, writeAt, writtenGauge } from '../ways-out';

/** More pressure than the weakest part that the gas reaches may see. */
export const pressureAboveRating = defineCheck({
  name: 'pressure-above-rating',
  severity: 'error',
  title: 'The pressure is above the rating of a part that the gas reaches',
  acceptable: false,
  reads: 'figure',
  ground: 'published',
  meaning:
    'As the valves stand at this step, the gas gets to a part whose rating, relief setting or tube bears less than the stated pressure, or than the nitrogen that a valve lets through to it. Shut it off, bypass it or lower the pressure.',
  why: 'A shell or a coil that bursts under gas throws pieces; a relief that lifts empties the bottle into the room.',
  source:
    'ASHRAE 15 field test and federal guide specification 15652A (handbook 7.1); tube by ASME B31 formula (handbook 1.3)',
  wrong: {
    base: 'rack',
    instead: [
      ['close sol-1, sol-2\n', ''],
      ['pressure-test high-side to 350 psig for 60 min', 'pressure-test high-side to 350 psig for 60 min # <- here'],
    ],
  },
  right: { base: 'rack' },
  step(here) {
    for (const event of here.events('pressurises'))
      for (const space of event.spaces) look(here, space.parts, event.level);
    for (const flow of here.events('flows')) if (flow.level !== null) look(here, flow.reached, flow.level);
    letIn(here);
  },
});

/** Nitrogen of a test that a valve lets through to what bears less than it. */
function letIn(here: Here): void {
  const { before, after } = here;
  if (before === after || before.parts === after.parts || here.events('pressurises').length > 0) return;
  const [opened] = before.parts.flatMap((part, index) =>
    part.position !== after.parts[index]!.position && after.parts[index]!.position === 'open' ? [index] : [],
  );
  if (opened === undefined) return;
  for (const space of spacesOf(after, opened)) {
    const held = heldBy(after, space);
    if (held.gas !== 'nitrogen' || !underPressure(after, held)) continue;
    // What stood as high before this step is that step's finding.
    const fresh = space.parts.filter((index) =>
      before.parts[index]!.contents.every(({ high }) => high < held.high * 0.98),
    );
    const least = weakest(here.plan, after, fresh);
    if (!least || held.high <= least.limit * 1.005) continue;
    here.report({
      message: (say) =>
        `${gauge(here.plan, held.high)} of nitrogen come through ${say.part(opened)} to ${say.part(least.part)}, which bears ${gauge(here.plan, least.limit)} (${least.why}): let the nitrogen down first.`,
      root: least.part,
      concerns: fresh,
      related: [{ part: least.part, message: 'it is reached by the open valves' }],
      fixes: [insertBefore('Release the nitrogen before this step', here.step, 'release nitrogen outdoors')],
    });
    return;
  }
}

function look(here: Here, parts: readonly number[], level: number): void {
  const least = weakest(here.plan, here.before, parts);
  // Half a percent is less than a gauge shows.
  if (!least || level <= least.limit * 1.005) return;
  here.report({
    message: (say) =>
      `${gauge(here.plan, level)} reaches ${say.part(least.part)}, which bears ${gauge(here.plan, least.limit)} (${least.why}): shut it off, or lower the pressure.`,
    slot: 'level',
    root: least.part,
    concerns: [...parts],
    related: [{ part: least.part, message: 'it is reached by the open valves' }],
    fixes: writeAt(here.step, here.step.values['level'], writtenGauge(here.plan, least.limit)),
  });
}
