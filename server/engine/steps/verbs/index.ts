import type { Verb } from '../verb';
import { acidTest } from './acid-test';
import { addOil } from './add-oil';
import { adjust } from './adjust';
import { backFlush } from './back-flush';
import { benchFlush } from './bench-flush';
import { blowOut } from './blow-out';
import { breakVacuum } from './break-vacuum';
import { bypass } from './bypass';
import { cap } from './cap';
import { change } from './change';
import { changeOil } from './change-oil';
import { charge } from './charge';
import { checkStep } from './check';
import { choke } from './choke';
import { cleanStep } from './clean';
import { closeValves } from './close';
import { connect } from './connect';
import { crimp } from './crimp';
import { cutOut } from './cut-out';
import { decayTest } from './decay-test';
import { disconnect } from './disconnect';
import { drain } from './drain';
import { energise } from './energise';
import { evacuate } from './evacuate';
import { flare } from './flare';
import { flush } from './flush';
import { hold } from './hold';
import { inspect } from './inspect';
import { install } from './install';
import { labelSystem } from './label';
import { leakCheck } from './leak-check';
import { lockOut } from './lock-out';
import { moveProduct } from './move-product';
import { notify } from './notify';
import { open } from './open';
import { phase } from './phase';
import { photo } from './photo';
import { pinchOff } from './pinch-off';
import { place } from './place';
import { plug } from './plug';
import { pressureTest } from './pressure-test';
import { proveAirflow } from './prove-airflow';
import { proveZero } from './prove-zero';
import { pullSwab } from './pull-swab';
import { pumpDown } from './pump-down';
import { purge } from './purge';
import { readStep } from './read';
import { recordStep } from './record';
import { recover } from './recover';
import { release } from './release';
import { remove } from './remove';
import { removeCores } from './remove-cores';
import { renew } from './renew';
import { repeat } from './repeat';
import { replaceCores } from './replace-cores';
import { reset } from './reset';
import { restore } from './restore';
import { returnToControl } from './return';
import { run } from './run';
import { sample } from './sample';
import { start } from './start';
import { stop } from './stop';
import { survey } from './survey';
import { tag } from './tag';
import { takeOffClosures } from './take-off';
import { tape } from './tape';
import { trim } from './trim';
import { uncap } from './uncap';
import { unplug } from './unplug';
import { untag } from './untag';
import { unwrap } from './unwrap';
import { visit } from './visit';
import { watch } from './watch';
import { weigh } from './weigh';
import { wrap } from './wrap';

/** Every step verb. A new verb is one file and its line here. */
export const verbs: readonly Verb[] = [
  survey,
  leakCheck,
  acidTest,
  sample,
  readStep,
  checkStep,
  recordStep,
  labelSystem,
  photo,
  notify,
  weigh,
  tag,
  untag,
  moveProduct,
  bypass,
  restore,
  reset,
  lockOut,
  energise,
  open,
  closeValves,
  returnToControl,
  stop,
  start,
  run,
  pumpDown,
  recover,
  proveZero,
  breakVacuum,
  release,
  disconnect,
  cutOut,
  remove,
  place,
  install,
  connect,
  flare,
  change,
  renew,
  removeCores,
  replaceCores,
  changeOil,
  addOil,
  cleanStep,
  cap,
  uncap,
  crimp,
  choke,
  tape,
  plug,
  unplug,
  trim,
  takeOffClosures,
  pinchOff,
  wrap,
  unwrap,
  watch,
  inspect,
  drain,
  blowOut,
  flush,
  backFlush,
  benchFlush,
  pullSwab,
  purge,
  pressureTest,
  evacuate,
  decayTest,
  charge,
  adjust,
  proveAirflow,
  hold,
  phase,
  repeat,
  visit,
];
