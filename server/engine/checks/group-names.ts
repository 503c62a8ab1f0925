import type { Check } from './define';
import { backToNowhere } from './rules/back-to-nowhere';
import { departureWithoutReason } from './rules/departure-without-reason';
import { duplicateLabel } from './rules/duplicate-label';
import { idleDeparture } from './rules/idle-departure';
import { kindDoesNotFit } from './rules/kind-does-not-fit';
import { notOfThisPart } from './rules/not-of-this-part';
import { parameterMissing } from './rules/parameter-missing';
import { standardNotForKind } from './rules/standard-not-for-kind';
import { standardRevision } from './rules/standard-revision';
import { unknownName } from './rules/unknown-name';

/** Names, references and revisions: what binding alone cannot see. */
export const nameChecks: readonly Check[] = [
  unknownName,
  backToNowhere,
  duplicateLabel,
  notOfThisPart,
  parameterMissing,
  standardRevision,
  kindDoesNotFit,
  standardNotForKind,
  departureWithoutReason,
  idleDeparture,
];
