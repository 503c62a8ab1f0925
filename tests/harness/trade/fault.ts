import type { Step } from '../../../server/engine/plan/step';

/** Something that a practitioner would stop at, with its reason and the handbook's section. */
export interface Fault {
  /** Short name of the rule of the trade, and what it was broken on: two of one key are the same mistake. */
  readonly rule: string;
  readonly subject: string;
  readonly why: string;
  /** Steps that break it, cause it or rely on it. */
  readonly steps: readonly Step[];
  /** Parts that it is about, by their index in the graph. */
  readonly parts: readonly number[];
}
export const keyOf = (fault: Fault): string => `${fault.rule} ${fault.subject}`;

/** The rules of the trade that the model holds a plan against; the sections are the handbook's. */
export const reasons = {
  'open-live': 'Opened before power is locked out (11, electrical isolation; 13.1).',
  'open-charged': 'Opened while refrigerant stands in it (2.1; 13.1 recover before opening).',
  'open-unproven': 'Opened before zero is proved (13.1).',
  'open-pressure': 'Opened under nitrogen pressure (6.4, 7.1: no work under pressure).',
  'open-proved': 'Opened after it was evacuated and proved (13.1: any open after tested loses the proof).',
  'recover-short': 'A section that the recovery cannot reach stays full (2.1; 13.5 section by section).',
  'pump-down-standing': 'Pumped down by a machine that stands or is locked out (13.1).',
  'pump-down-through': 'Nothing shuts off the vessel that is to hold the charge (13.5 valve positions).',
  'no-path': 'Blown or flushed through a line that is not open at both ends (5.1, 5.2).',
  'blown-back':
    'Blown out with one end shut: what comes out of the other end depends on where the gas is let in (5.2: each leg).',
  'solvent-meets-charge': 'Solvent into a part that holds refrigerant (13.1: recover before flushing).',
  'not-inspected': 'Flushed without a look for low spots and traps (5.2; 10.3).',
  'no-container': 'Solvent with nothing to catch it (5.2, 5.3).',
  'flush-on-flush': 'A second flush on the solvent of the first, with no purge between (5.2).',
  'wet-closed': 'Closed, tested or pumped down while solvent stands in it (5.2; 13.1 purge after flush).',
  'wet-torch': 'A torch on a line with solvent in it (5.3: no flame).',
  'no-nitrogen': 'Brazed with no nitrogen flowing (6.3; 13.1 braze).',
  'choke-left': 'A crimp, choke, tape or plug stays in a line that is closed (13.1; floor list).',
  'not-there': 'Joined, closed or opened where nothing stands or where the joint is made (13.1).',
  'drier-early': 'The new drier is in before the last flush (5.1; 13.1 drier last).',
  'drier-old': 'An opened circuit goes on with its old drier (4.4).',
  'test-open': 'Tested with a joint open (7.1; 13.1 all joints made).',
  'airflow-locked': 'Airflow proved while power is locked out: no fan runs (13.1).',
  'test-charged': 'Nitrogen or a pump on a part that holds refrigerant (2.2; 13.1).',
  'over-rated': 'Tested above the rating of a part in reach (7.1).',
  untested:
    'Pumped down, charged or started with an opened part that was not tested at its design pressure (7.1; 13.1).',
  'evacuated-open': 'Pumped down or held with a joint open (8.1; 13.1).',
  'evacuated-pressure': 'A pump on nitrogen pressure (13.1: release, then evacuate).',
  'not-vacuum': 'A decay test of something that is not under vacuum (8.1).',
  'let-in-unproven': 'Refrigerant let into a vacuum that no decay test has proved (8.1; 13.1).',
  'let-in-dirty': 'Refrigerant let into air, nitrogen or what was left of the old (9; 13.1).',
  'let-in-open': 'Refrigerant let into something that is open to the air (13.1).',
  'pull-rough': 'Refrigerant let into a vacuum above the common 500 micron (8.1).',
  'break-charged':
    'Nitrogen let into a part that holds refrigerant (2.2; 13.1: level reached; 8.2: not into the charge).',
  'charge-shut': "Charged while the new unit's own valves are shut (13.2).",
  'charge-twice': 'The whole charge weighed in twice (9.1).',
  'ignition-unchecked': 'Flammable refrigerant let in without a look for ignition sources (11, charge A2L/A3).',
  'powered-in-vacuum': 'Power back before the vacuum is broken with refrigerant (13.1: power on only after).',
  'powered-early':
    'Power back while the circuit stands open, or while a machine that goes on by itself stands empty (11: auto-restart; 13.1).',
  'started-locked': 'Started while power is locked out (13.1).',
  'started-empty': 'Started on vacuum, nitrogen, air or an open circuit (13.1).',
  'started-shut': 'Started against a valve that the plan shut (13.5: a matching open).',
  'open-below': 'Opened below the pressure of the air, which is sucked in with its water (13.1: break vacuum).',
  'standing-pressure':
    'The pressure of a machine that stands is a reading too; whether the running one was meant is not said (9.2, 13.1 baseline).',
  'read-standing': 'Read or adjusted on a machine that does not run (9.2: 15 min steady).',
  'read-resumed':
    'Nobody starts it, but it ran when its power went and goes on when power is back; 13.1 makes the start a step of its own.',
  'no-power-to-valve': 'A motor valve is to be opened and nothing gives it power (13.1; language: comes shut).',
  'oil-round-late': 'An oil round after the old refrigerant has gone (4.3).',
  'never-in': 'A new part that no step sets in place (13.1).',
  'never-back': 'A part that is taken off and never put back.',
  'never-off': 'A part that is to go stays in the circuit.',
  'left-open': 'A joint stays open to the end (13.1).',
  'left-empty': 'The job ends with vacuum, nitrogen or air in a part (13.1 charge).',
  'left-shut': 'A valve is shut and never opened again (13.5).',
  'left-held': 'A valve held open is never returned to its control (13.5).',
  'left-out': 'An alarm or a control put out of action stays so (13.5 must-restore list).',
  'left-locked': 'Power is locked out to the end (13.1).',
} as const;
export type Rule = keyof typeof reasons;
