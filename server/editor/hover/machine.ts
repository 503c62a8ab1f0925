import type { Bound } from '../../engine/plan/bind';
import type { Figure } from '../../engine/takeoff/figure';
import type { Asked } from '../asking';
import type { PlanView } from '../engine';
import { planAround } from '../plan-around';
import { figurePage } from './figure';

/** Words of the system and the site, with the figures of the machine that hang on them. */
const ofMachine: Readonly<Record<string, readonly string[]>> = {
  refrigerant: [
    'mass-flow-ratio',
    'suction-volume-ratio',
    'pressure-ratio-change',
    'valve-size-change',
    'discharge-temperature',
  ],
  oil: ['old-oil-share'],
  'design-pressure': ['design-pressure', 'test-pressure'],
  charge: ['room-concentration', 'room-charge-limit'],
  'smallest-room': ['room-charge-limit', 'room-concentration', 'flammable-charge-cap'],
  capacity: ['mass-flow'],
};

/** Words of a line's block, with the figures of the line that hang on them. */
const ofLine: Readonly<Record<string, readonly string[]>> = {
  tube: ['tube-working-pressure', 'line-velocity'],
  wall: ['tube-working-pressure'],
  length: ['line-volume', 'pressure-drop', 'saturation-loss', 'oil-film'],
  elbows: ['equivalent-line-length', 'pressure-drop'],
  rise: ['riser-flooding-number', 'double-riser-number', 'double-riser-least-flow', 'static-head', 'subcooling-left'],
  drop: ['riser-flooding-number', 'static-head', 'subcooling-left'],
  capacity: ['mass-flow', 'line-velocity'],
};

/** What the statement under the pointer gives rise to beside the steps: sizes of lines, pressures, limits of rooms. */
export function machinePages(asked: Asked, bound: Bound): readonly string[] {
  const word = bound.word?.word;
  const view = word === undefined ? undefined : planAround(asked);
  if (word === undefined || view === undefined) return [];
  const { atmosphere } = view.plan.site;
  const part = view.plan.partStatements.findIndex((each) => each.block.includes(bound));
  const figures =
    part >= 0
      ? figuresOfLine(view, part).filter((figure) => ofLine[word]?.includes(figure.name))
      : bound.place === 'system' || bound.place === 'site'
        ? [...view.takeOff.machine, ...systemFlow(view)].filter((figure) => ofMachine[word]?.includes(figure.name))
        : [];
  return figures.length > 0 ? [figures.map((figure) => figurePage(figure, atmosphere)).join('\n\n')] : [];
}

/** The figures of a line, by its index; none of a part that is no line. */
export function figuresOfLine({ plan, takeOff }: PlanView, index: number): readonly Figure[] {
  const name = plan.graph.parts[index]?.name;
  return takeOff.lines.find((line) => line.part === name)?.figures ?? [];
}

/** What flows at the capacity of the system, as the first line has it that carries all of it. */
const systemFlow = ({ takeOff }: PlanView): readonly Figure[] =>
  takeOff.lines.flatMap(({ figures }) => figures).filter((figure) => figure.subject.startsWith('system'));
