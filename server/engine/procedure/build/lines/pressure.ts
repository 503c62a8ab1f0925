import { exactly, show } from '../../../quantity';
import { settleTime } from '../../../reference/pressure-test';
import type { Figure } from '../../../takeoff/figure';
import { allowedLoss, readingChange, reliefSetting } from '../../../takeoff/figures';
import { input } from '../../../takeoff/given';
import { testStages } from '../../../takeoff/test-stages';
import { checks, reading, textLine } from '../../construct';
import type { StepLine } from '../../document';
import { type Run, sentence } from '../../sentence';
import type { Here } from '../here';

/** Up to here (Pa over the atmosphere, about 22 psig) a test finds open joints with bubbles: the gas need not settle. */
const lowTest = 150e3;

/** The window for the relief on the nitrogen supply: above the test, below the weakest part that it reaches. */
export function reliefWindow(here: Here): Figure | null {
  const given = here.figures('relief-setting')[0];
  if (given) return given;
  const event = here.events('pressurises').find((each) => each.purpose === 'test');
  const parts = event?.spaces.flatMap((space) => space.parts) ?? [];
  const ratings = parts.flatMap((index) => here.plan.graph.parts[index]!.properties.rated ?? []);
  const weakest = ratings.length > 0 ? Math.min(...ratings) : (here.plan.system.rated?.quantity.low ?? null);
  if (!event || weakest === null) return null;
  const figure = reliefSetting.figure(
    here.step.label ?? 'test',
    { test: input(exactly('pressure', event.level)), weakest: input(exactly('pressure', weakest)) },
    { atmosphere: here.ruler.atmosphere },
  );
  return figure.quantity === null ? null : figure;
}

/** Stages on the way up, readings at start and end, and how a tight section reads when the weather moves. */
export function pressureTestLines(here: Here): readonly StepLine[] {
  const event = here.events('pressurises')[0];
  const level = here.stated('level');
  if (!event || !level) return [];
  const { ruler, plan } = here;
  const unit = ruler.unit('pressure', level);
  const degrees = ruler.unit('temperature', plan.site.outdoors?.amount ?? null);
  const lines: StepLine[] = [];
  // The stages of the trade are whole psig; in SI they are near enough to two digits.
  const si = ruler.main === 'si';
  const stages = testStages(event.level, ruler.atmosphere);
  if (stages.length > 1) {
    const shown = stages
      .slice(0, -1)
      .map((stage) =>
        show(exactly('pressure', stage), { as: unit, atmosphere: ruler.atmosphere, ...(si && { digits: 2 }) }),
      );
    lines.push(checks('Reach in stages', ...shown, level.literal.text));
  }
  if (here.value('bubbles') === true) lines.push(checks('Bubbles', 'every joint soaped and looked at'));
  const at = [
    { lead: '', unit },
    { lead: 'at', unit: degrees },
  ];
  const settle = event.level > lowTest + ruler.atmosphere ? ruler.fact(settleTime.quantity) : null;
  lines.push(
    reading('Start', at, [
      ...sentence(ruler.authored(level)),
      ...(settle ? sentence(', once the gas has settled for ', settle) : []),
    ]),
    reading('End', at, [
      ...sentence('as at the start, corrected for temperature; loss at most '),
      lossOf(here, event.level),
    ]),
  );
  const slope = settle ? slopeOf(here, event.level) : null;
  if (slope)
    lines.push(
      textLine('If it is tight', [
        ...sentence('start reading, and '),
        slope.pressure,
        ...sentence(` more for each ${slope.degree} warmer, as much less for each colder.`),
      ]),
    );
  return lines;
}

function lossOf(here: Here, level: number): Run {
  const given = here.figures('allowed-loss')[0];
  const figure =
    given?.quantity != null
      ? given
      : allowedLoss.figure('test', inputsOf(here, level), { atmosphere: here.ruler.atmosphere });
  return here.ruler.figure(figure) ?? { kind: 'words', text: 'what the gauge can show' };
}

function slopeOf(here: Here, level: number): { readonly pressure: Run; readonly degree: string } | null {
  const si = here.ruler.main === 'si';
  const given = si ? undefined : here.figures('reading-change')[0];
  const figure =
    given?.quantity != null
      ? given
      : readingChange.figure(
          'test',
          { ...inputsOf(here, level), ...(si && { change: input(exactly('temperature-difference', 1)) }) },
          { atmosphere: here.ruler.atmosphere },
        );
  const shown = here.ruler.figure({ ...figure });
  // The twin would be for another degree; it is left out.
  return shown ? { pressure: { ...shown, other: null }, degree: si ? 'degC' : 'degF' } : null;
}

const inputsOf = (here: Here, level: number) => ({
  pressure: input(exactly('pressure', level)),
  // 70 °F where the site states none: the temperature at which gas contents are stated.
  temperature: input(here.plan.site.outdoors?.quantity ?? exactly('temperature', 294.26)),
});

/** What is read after a vacuum was broken. */
export function breakVacuumLines(here: Here): readonly StepLine[] {
  const level = here.stated('level');
  const unit = here.ruler.unit('pressure', level);
  const limit = level
    ? sentence('at ', here.ruler.authored(level), ', not more')
    : sentence('not above the air outside');
  return [reading('Gauge at the end', unit, limit)];
}

/** Nothing is loosened before the gauges stand at nothing. */
export function releaseLines(here: Here): readonly StepLine[] {
  const to = here.stated('to');
  const names = [...new Set(here.events('lets-down').flatMap((event) => here.partNames(event.spaces)))];
  const rest = to ? here.ruler.authored(to) : here.ruler.fact(exactly('pressure', here.ruler.atmosphere), 'psig');
  return names.length === 0
    ? []
    : [reading('Every gauge at the end', here.ruler.unit('pressure', to), sentence(rest), true)];
}
