import { choice, count, date, either, name, pair, quantity } from '../plan/terms';
import { clause, first, flag, maybe, word } from '../plan/vocabulary';

/** Words of the `system` block: the machine as a whole. */
export const systemWords = [
  word({
    word: 'refrigerant', places: ['system'], once: true, roles: ['state', 'figure', 'check'],
    form: { before: first(name('refrigerant'), 'what runs in it now'), after: clause('->', name('refrigerant'), 'what will run in it') },
    meaning: 'The refrigerant before and after; without an arrow it stays the same.', example: 'refrigerant R-22 -> R-454B',
  }),
  word({
    word: 'oil', places: ['system'], once: true, roles: ['state', 'check'],
    form: { before: first(name('oil'), 'the oil now'), after: clause('->', name('oil'), 'the oil afterwards') },
    meaning: 'The oil before and after; without an arrow it stays the same.', example: 'oil mineral -> POE',
  }),
  word({ word: 'recover-charge', places: ['system'], once: true, form: { mass: first(quantity('mass'), 'as the plate says') }, meaning: 'What is in the machine now.', example: 'recover-charge 7 lb 4 oz', roles: ['figure', 'check'] }),
  word({
    word: 'charge', places: ['system'], once: true, roles: ['figure', 'check'],
    form: { mass: first(quantity('mass'), "the maker's charge"), line: clause('for', quantity('length'), 'line that it covers'), ofLine: flag('of line', 'that is') },
    meaning: "The maker's charge, and the length of line that it covers.", example: 'charge 6 lb 2 oz for 15 ft of line',
  }),
  word({ word: 'line-allowance', places: ['system'], once: true, form: { rate: first(quantity('mass-per-length'), 'for each length of liquid line over that') }, meaning: "The maker's allowance for longer lines.", example: 'line-allowance 0.6 oz/ft per "line table"', roles: ['figure'] }),
  word({ word: 'oil-allowance', places: ['system'], once: true, form: { volume: first(quantity('volume'), 'oil to add'), beyond: clause('beyond', quantity('length'), 'line length') }, meaning: 'Oil that the maker asks for long lines.', example: 'oil-allowance 4 fl-oz beyond 80 ft', roles: ['figure'] }),
  word({
    word: 'capacity', places: ['system', 'part'], once: true, roles: ['figure', 'check'],
    form: { full: first(quantity('power'), 'at full load'), least: clause('least', quantity('power'), 'at the least load') },
    meaning: 'Cooling capacity at full and at least load.', example: 'capacity 24000 Btu/h, least 8000 Btu/h',
  }),
  word({ word: 'subcooling', places: ['system'], once: true, form: { target: first(quantity('temperature-difference'), 'the target') }, meaning: 'Target subcooling.', example: 'subcooling 10 Δ°F per "rating plate"', roles: ['figure', 'check'] }),
  word({ word: 'superheat', places: ['system'], once: true, form: { target: first(quantity('temperature-difference'), 'the target') }, meaning: 'Target superheat.', example: 'superheat 8..12 Δ°F', roles: ['figure', 'check'] }),
  word({
    word: 'design-pressure', places: ['system'], once: true, roles: ['figure', 'check'],
    form: { low: clause('low', quantity('pressure'), 'of the low side'), high: clause('high', quantity('pressure'), 'of the high side') },
    meaning: 'Design pressures from the nameplate.', example: 'design-pressure low 250 psig, high 450 psig',
  }),
  word({ word: 'evaporating', places: ['system'], once: true, form: { temperature: first(quantity('temperature'), 'evaporating'), at: maybe(choice('dew', 'mid', 'bubble'), 'of which curve') }, meaning: 'Evaporating temperature.', example: 'evaporating -15 degF dew', roles: ['figure'] }),
  word({ word: 'condensing', places: ['system'], once: true, form: { temperature: first(quantity('temperature'), 'condensing'), at: maybe(choice('dew', 'mid', 'bubble'), 'of which curve') }, meaning: 'Condensing temperature.', example: 'condensing 105 degF', roles: ['figure'] }),
  word({ word: 'velocity', places: ['system', 'part'], form: { accepted: flag('accepted', 'whatever the rule of thumb says') }, meaning: "Takes the maker's word for line sizes; the rule of thumb is then silent.", example: 'velocity accepted per "line table 3"', roles: ['check', 'sheet'] }),
  word({ word: 'rated', places: ['system', 'part'], once: true, form: { pressure: first(quantity('pressure'), 'highest working pressure') }, meaning: 'The highest pressure that it may see.', example: 'rated 500 psig', roles: ['figure', 'check'] }),
  word({ word: 'built', places: ['system'], once: true, form: { year: first(date(), 'year of manufacture') }, meaning: 'When the machine was made; some rules depend on it.', example: 'built 2003', roles: ['check'] }),
  word({ word: 'small-appliance', places: ['system'], once: true, form: { compressor: maybe(choice('runs', 'dead'), 'whether its compressor runs') }, meaning: 'Factory-sealed with 5 lb or less: its own recovery level.', example: 'small-appliance dead', roles: ['figure', 'check'] }),
];

/** Words of a part's block. */
export const partWords = [
  word({
    word: 'holds', places: ['part'], once: true, roles: ['state', 'figure'],
    form: { refrigerant: first(name('refrigerant'), 'which'), mass: maybe(quantity('mass'), 'how much') },
    meaning: 'The charge that new equipment comes with behind its own valves.', example: 'holds R-454B 6 lb 2 oz',
  }),
  word({ word: 'valves', places: ['part'], once: true, form: { position: first(choice('open', 'closed'), 'how they stand') }, meaning: "The part's (or the new unit's) own valves.", example: 'valves closed', roles: ['state'] }),
  word({ word: 'closed', places: ['part'], once: true, meaning: 'A valve that stands shut when the job begins or when it comes.', example: 'closed', roles: ['state'] }),
  word({
    word: 'tube', places: ['part'], once: true, roles: ['figure', 'check'],
    form: { outside: first(either(quantity('length'), name('tube')), 'outside diameter, or a tube of the shop'), standard: maybe(choice('ACR', 'EN', 'drawn', 'annealed'), 'by which table') },
    meaning: 'The tube, by outside diameter and table.', example: 'tube 7/8 in ACR',
  }),
  word({
    word: 'wall', places: ['part'], once: true, form: { thickness: first(quantity('length'), 'of the wall'), measured: flag('measured', 'on this line') },
    meaning: 'Wall thickness, where the table does not hold or it was measured.', example: 'wall 0.032 in measured', roles: ['figure', 'check'],
  }),
  word({ word: 'length', places: ['part'], once: true, form: { length: first(quantity('length'), 'along the tube') }, meaning: 'Length of a line.', example: 'length 48 ft', roles: ['figure'] }),
  word({ word: 'rise', places: ['part'], once: true, form: { height: first(quantity('length'), 'upwards in flow direction') }, meaning: 'Rise in flow direction; the inlet is then the far end of a flush.', example: 'rise 14 ft', roles: ['state', 'figure', 'check'] }),
  word({ word: 'drop', places: ['part'], once: true, form: { height: first(quantity('length'), 'downwards in flow direction') }, meaning: 'Drop in flow direction.', example: 'drop 9 ft', roles: ['state', 'figure'] }),
  word({
    word: 'trap', places: ['part'], roles: ['figure', 'check'],
    form: { at: clause('at', quantity('length'), 'from its beginning'), depth: clause('depth', quantity('length'), 'of the loop') },
    meaning: 'An oil trap or a low spot: it keeps liquid.', example: 'trap at 2 ft, depth 4 in',
  }),
  word({ word: 'elbows', places: ['part'], once: true, form: { number: first(count(), 'how many'), kind: maybe(choice('long-radius', 'standard'), 'kind') }, meaning: 'Elbows in the line; they add to its length for pressure drop.', example: 'elbows 6 long-radius', roles: ['figure'] }),
  word({ word: 'joint', places: ['part'], once: true, form: { kind: first(choice('brazed', 'flare', 'pressed', 'flanged'), 'kind of joint') }, meaning: 'How its ends are joined.', example: 'joint brazed', roles: ['state', 'figure', 'check'] }),
  word({ word: 'relief', places: ['part'], once: true, form: { pressure: first(quantity('pressure'), 'where it opens') }, meaning: 'A relief valve on the part, and its setting.', example: 'relief 400 psig', roles: ['check'] }),
  word({ word: 'volume', places: ['part'], once: true, form: { volume: first(quantity('volume'), 'inside') }, meaning: 'Inside volume.', example: 'volume 0.11 ft3', roles: ['figure'] }),
  word({ word: 'leak-sensor', places: ['part'], once: true, form: { built: maybe(choice('built-in', 'separate'), 'where') }, meaning: 'A sensor for leaking refrigerant.', example: 'leak-sensor built-in', roles: ['check'] }),
  word({ word: 'core', places: ['part'], once: true, form: { kind: first(choice('acid', 'moisture', 'standard'), 'kind of core') }, meaning: "A drier's core.", example: 'core acid', roles: ['check', 'sheet'] }),
  word({ word: 'both-ways', places: ['part'], once: true, meaning: 'A drier for flow in both directions.', example: 'both-ways', roles: ['check'] }),
  word({ word: 'bore', places: ['part'], once: true, form: { diameter: first(quantity('length'), 'inside') }, meaning: 'Bore of a cap tube or an orifice.', example: 'bore 0.042 in', roles: ['figure', 'check'] }),
  word({
    word: 'oil', places: ['part'], once: true, roles: ['state', 'figure'],
    form: { charge: first(pair(quantity('volume'), name('oil')), 'how much, and which') },
    meaning: "A compressor's oil charge.", example: 'oil 140 fl-oz POE',
  }),
  word({ word: 'drain', places: ['part'], form: { at: clause('at', quantity('length'), 'from its beginning') }, meaning: 'A drain in a line, at a distance from its beginning.', example: 'drain at 2 ft', roles: ['figure', 'sheet'] }),
  word({
    word: 'water-flow', places: ['part'], once: true, form: { flow: first(quantity('volume-flow'), 'of water or brine') },
    meaning: "The other fluid's side of an exchanger: it must flow, or be drained, while refrigerant boils off in it.", example: 'water-flow 12 L/min', roles: ['check', 'sheet'],
  }),
];
