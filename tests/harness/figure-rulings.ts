import type { Plan } from '../../server/engine/plan/plan';
import { after, medium } from './head-rulings';
import { harmful, harmless, type Line, type LineEdit, type Ruling, type Scene, unclear } from './scene';
import { figuresIn, inSI, kindOf } from './units';

const psi = 6894.76;
const micron = 0.133322;

/** Rulings on a figure of a step that breaks no state; sections are the handbook's. Null where no figure was changed. */
export function figureRuling({ edit, before: { plan }, faultsAfter }: Scene): Ruling | null {
  const { figure } = edit;
  const step = edit.steps[edit.at];
  if (!figure || !step) return null;
  if (/ per "/.test(step.plain)) return unclear('The sheet cited is not at hand.');
  const { was, now, key, nowUnit } = figure;
  const later = edit.steps.slice(edit.at + 1);
  const until = later.findIndex((each) => /^(decay-test|charge|open)$/.test(each.verb));
  // The pull that the refrigerant breaks; a deeper one may stand in the other file of a job with a standard.
  const lastPull =
    !later.slice(0, until < 0 ? undefined : until).some((each) => each.verb === 'evacuate') &&
    (figure.now <= 68 || faultsAfter.some((fault) => fault.rule === 'pull-rough'));
  const kind = kindOf(figure.unit);
  if (kind !== kindOf(nowUnit) && !(kind === 'recovery' && nowUnit === 'psig'))
    return unclear('Another kind of figure.');
  if (kind === 'flow')
    return now < 1.5e-5 || now > 8e-5
      ? harmful('Out of the usual 2 to 10 cfh (6.3).')
      : harmless('Within the usual 2 to 10 cfh (6.3).');
  const higher = provedHigher(step, later, plan);
  if (kind === 'time') return timeRuling(step.verb, step.plain, was, now, { edit, later, higher });
  switch (step.verb) {
    case 'pressure-test': {
      if (now > was) {
        const design = plan.system.designHigh ?? plan.system.designLow;
        const most = design ? design.quantity.low - plan.site.atmosphere : null;
        if (most !== null && now > most * 1.5)
          return harmful('Far above the design pressure of either side (7.1: at most a quarter more).');
        return now <= 30 * psi ? harmless('Still a first, low stage (7.1).') : unclear('A stage made higher.');
      }
      return higher
        ? harmless(
            'A stage below the one that proves the same parts after it (7.1: the low stage only finds what is open).',
          )
        : unclear('A stage of several made lower.');
    }
    case 'evacuate':
      if (now > 101325) return harmful('No vacuum at all (8.4).');
      if (!lastPull)
        return now > 20000 * micron
          ? unclear('A first pull that dries little.')
          : now < 50 * micron
            ? unclear('As deep as a pump reaches.')
            : harmless('A first pull of several may stop there (8.2).');
      if (now > 500 * micron * 1.02)
        return harmful('The last pull ends above the common 500 micron (8.1).', /decay-test/);
      return now < 50 * micron
        ? unclear('Whether pump and hoses reach it is not stated.')
        : harmless('A deeper last pull (8.1).');
    case 'decay-test':
      if (now < was) return now >= 20 * micron ? harmless('A stricter limit.') : unclear('No gauge shows so little.');
      return now > 1000 * micron
        ? harmful('A rise that no tight and dry system shows is let pass (8.1).')
        : unclear('Limits in use differ (8.1, 15.2).');
    case 'recover': {
      if (nowUnit === 'psig')
        return harmful('Opened over the pressure of the air (2.1).', /disconnect|cut-out|remove|change/);
      if (now > 29.93 * 3386.39) return harmful('Deeper than a perfect vacuum (8.4).');
      const heavy = (plan.system.recoverCharge ?? plan.system.charge)?.quantity.low ?? 0;
      const gas = plan.system.refrigerant.before ?? after(plan);
      const asked = plan.system.smallAppliance
        ? 4
        : medium.test(gas)
          ? heavy >= 90.7
            ? 15
            : 10
          : heavy >= 90.7
            ? 10
            : 0;
      // Recovery of the medium class in this model is held against the charge alone; an isolated component asks the lower row.
      if (now < asked * 3386.39 * 0.98 && was >= asked * 3386.39 * 0.98 && /system/.test(step.plain))
        return harmful('Less than the rule asks (2.1).');
      return now >= was || asked === 0
        ? harmless('The rule asks no more (2.1).')
        : unclear('Which row of the rule holds is not clear.');
    }
    case 'purge':
    case 'blow-out':
      if (kind !== 'pressure') return unclear('Another figure.');
      if (now > 200 * psi) return harmful('The regulator stays under 200 psig while purging (5.2).');
      return now >= was || now >= 35 * psi
        ? harmless('Within what a purge may have (5.2).')
        : unclear('It may still blow it out.');
    case 'charge': {
      const stated = plan.system.charge?.quantity.low;
      const old = plan.system.recoverCharge?.quantity.low;
      const known = stated ?? old;
      if (!known || was < known * 0.65 || was > known * 1.2) return unclear('Nothing to hold it against.');
      const share = Math.abs(now - was) / was;
      if (share <= 0.05) return harmless('A trifle: first charges are given within five to ten per cent (9.3).');
      if (share <= 0.15) return unclear('Off by no more than first charges differ (9.3).');
      return harmful(
        'Far from the charge that the system is said to take (9.1).',
        /adjust|charge|refrigerant|cylinder/,
      );
    }
    case 'adjust': {
      if (kind !== 'mass') return unclear('Another figure.');
      const stated = plan.system.charge?.quantity.low;
      if (!stated) return unclear('Nothing to hold it against.');
      if (now > stated * 1.3)
        return harmful('A limit far above the charge limits nothing (9.3: at most 110 %).', /charge/);
      return now < stated * 0.75
        ? harmful('A limit under what was weighed in before (9.3).', /charge/)
        : harmless('A limit near the charge.');
    }
    case 'acid-test':
      return now > 0.2
        ? harmful('Far above any limit of acid in use (4.5).')
        : now < was
          ? harmless('A stricter limit.')
          : unclear('Limits differ by oil (15.18).');
    case 'read':
      if (!/pressure-drop/.test(step.plain) || kind !== 'difference') return unclear('Another figure.');
      return now > 8 * psi
        ? harmful('Above any limit for a drier (4.5).')
        : now < was
          ? harmless('A stricter limit (4.5).')
          : unclear('Limits differ by service (4.5).');
    case 'check':
      return now < was
        ? harmful('Nearer than the 10 ft zone (11, charge A2L/A3).', /open|charge/)
        : harmless('A wider look.');
    case 'break-vacuum':
      return now <= 5 * psi
        ? harmless('A break at 0 to 3 psig, near enough (6.3, 8.2).')
        : unclear('A break at a higher pressure.');
    case 'add-oil':
      return unclear('How much the lines want is for the maker.');
    case 'change-oil':
      if (kind !== 'volume') return unclear('A share.');
      return now > was * 1.5
        ? harmful("More than the compressor's charge of oil.", /\boil\b/)
        : unclear('Some leave part of it for later.');
    default:
      return unclear(`Another figure (${key}).`);
  }
}

interface Around {
  readonly edit: LineEdit;
  readonly later: readonly Line[];
  /** Whether a later test at a higher pressure, held for ten minutes and more, proves the same parts. */
  readonly higher: boolean;
}

function timeRuling(verb: string, plain: string, was: number, now: number, { edit, later, higher }: Around): Ruling {
  switch (verb) {
    case 'pressure-test':
      if (now >= was) return harmless('A longer hold.');
      if (higher && /bubbles/.test(plain) && now >= 60)
        return harmless('The low stage asks for soap and states no hold; the higher one after it is held (7.1).');
      if (higher && !/bubbles/.test(plain))
        return harmless('The hold that proves is that of the higher stage after it (7.1).');
      return /bubbles/.test(plain)
        ? unclear('Long enough to soap the joints, or not.')
        : now < 600
          ? harmful('Held under the least of ten minutes (7.1).')
          : harmless('Ten minutes and more are in use (7.1).');
    case 'decay-test':
      return now >= was
        ? harmless('A longer watch.')
        : now < 300
          ? harmful('Too short to show a leak or water (8.1: ten minutes and more).')
          : now >= 600
            ? harmless('Ten minutes and more are in use (8.1).')
            : unclear('Times in use differ (8.1).');
    case 'flush':
      return now < 25 || now > 100
        ? harmful('Out of the common 30 to 90 s (5.2).')
        : harmless('Within the common 30 to 90 s (5.2).');
    case 'purge':
      if (now > was * 5) return unclear('Nitrogen and the air of the room may not last for it (6.4).');
      return now >= was ? harmless('A longer purge.') : unclear('A purge of several, or long enough for its volume.');
    case 'blow-out':
      if (now > was * 5) return unclear('Nitrogen and the air of the room may not last for it (6.4).');
      return now >= 30
        ? harmless('Thirty seconds and more (5.2).')
        : unclear('Shorter than the thirty seconds of the manuals (5.2).');
    case 'energise':
      return now >= 12 * 3600
        ? harmless('Long enough (13.1: 12 h and more).')
        : harmful('The crankcase heater is on for less than 12 h (13.1).', /start|restore/);
    case 'run':
      return now >= 24 * 3600
        ? harmless('A day and more (4.3).')
        : mixesOil(edit, later)
          ? harmful('Runs less than a day between oil changes (4.3).', /change-oil|repeat|sample/)
          : unclear('No oil change hangs on it; how long it is watched is for the author.');
    case 'watch':
      return now >= 1800
        ? harmless('Half an hour and more (11, braze).')
        : harmful('The watch for fire is under half an hour (11, braze).');
    case 'adjust':
      return now >= 840
        ? harmless('A quarter of an hour steady and more (9.2).')
        : harmful('Less than a quarter of an hour steady (9.2).');
    case 'read':
      return now >= 840 ? harmless('Steady by then (9.2).') : unclear('It may be steady by then.');
    case 'break-vacuum':
      return now >= 600 && now <= 4 * 3600
        ? harmless('A soak in use (6.3).')
        : now > was
          ? harmless('A longer soak.')
          : unclear('A short soak.');
    default:
      return unclear(later.length > 0 ? 'Another time.' : 'Another time at the end.');
  }
}

/** A run that an oil change or a sample of the oil follows, be it in the next round of its repeat. */
function mixesOil(edit: LineEdit, later: readonly Line[]): boolean {
  if (later.some((each) => /^(change-oil|sample oil)\b/.test(each.plain))) return true;
  const lines = edit.source.split('\n');
  const depth = (line: string): number => /^\s*/.exec(line)![0].length;
  let from = edit.steps[edit.at]!.from;
  const own = depth(lines[from]!);
  while (from > 0 && (lines[from]!.trim() === '' || depth(lines[from]!) >= own)) from--;
  return (
    /^\s*([\w-]+: )?repeat\b/.test(lines[from]!) &&
    lines.slice(from, edit.steps[edit.at]!.from).some((line) => /\bchange-oil\b/.test(line))
  );
}

/** Whether a later test of the same parts goes higher and is held for ten minutes or more (7.1). */
function provedHigher(step: Line, later: readonly Line[], plan: Plan): boolean {
  if (step.verb !== 'pressure-test') return false;
  const targets = (plain: string): string => plain.replace(/^\S+ /, '').split(/ to | for /)[0]!;
  const held = plan.parameters.testPressure;
  const level = (plain: string): number =>
    / to test-pressure/.test(plain) ? (held ? held.quantity.low - plan.site.atmosphere : 0) : pick(plain, 'pressure');
  return later.some(
    (each) =>
      each.verb === 'pressure-test' &&
      [targets(step.plain), 'system', 'each open part'].includes(targets(each.plain)) &&
      level(each.plain) > level(step.plain) &&
      pick(each.plain, 'time') >= 600,
  );
}

/** The first figure of a kind in a statement, in SI; 0 if there is none. */
function pick(plain: string, kind: string): number {
  const found = figuresIn(plain).find((each) => kindOf(each.unit) === kind);
  return found ? (inSI(found.number, found.unit) ?? 0) : 0;
}
