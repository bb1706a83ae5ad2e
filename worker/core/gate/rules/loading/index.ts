import type { Rule } from '../../rule.ts';
import { classContradicted } from './class-contradicted.ts';
import { classUnstated } from './class-unstated.ts';
import { cockpitStateImpossible } from './cockpit-state-impossible.ts';
import { configurationWithoutSchedule } from './configuration-without-schedule.ts';
import { densityImplausible } from './density-implausible.ts';
import { enduranceUnusual } from './endurance-unusual.ts';
import { energyShort } from './energy-short.ts';
import { energyUnstated } from './energy-unstated.ts';
import { envelopeArmUnusual } from './envelope-arm-unusual.ts';
import { envelopeCornerUnlikely } from './envelope-corner-unlikely.ts';
import { envelopeCornerUnusual } from './envelope-corner-unusual.ts';
import { envelopeExceededByLegalLoading } from './envelope-exceeded-by-legal-loading.ts';
import { envelopeMissing } from './envelope-missing.ts';
import { envelopeNotUsable } from './envelope-not-usable.ts';
import { envelopeWithinUncertainty } from './envelope-within-uncertainty.ts';
import { lateralArmMissing } from './lateral-arm-missing.ts';
import { lateralLimitsMissing } from './lateral-limits-missing.ts';
import { lateralLimitsNotUsable } from './lateral-limits-not-usable.ts';
import { leastLoadTooHeavy } from './least-load-too-heavy.ts';
import { minimumSoloMassHigh } from './minimum-solo-mass-high.ts';
import { nonLiftingMassExceeded } from './non-lifting-mass-exceeded.ts';
import { pilotComputesLoading } from './pilot-computes-loading.ts';
import { pilotStationMissing } from './pilot-station-missing.ts';
import { powerUnstated } from './power-unstated.ts';
import { seatLimitUnusual } from './seat-limit-unusual.ts';
import { seatsDiffer } from './seats-differ.ts';
import { seatsStaggered } from './seats-staggered.ts';
import { standardLoadingOutside } from './standard-loading-outside.ts';
import { stationAboveUsefulLoad } from './station-above-useful-load.ts';
import { stationLimitsCrossed } from './station-limits-crossed.ts';
import { suspensionGap } from './suspension-gap.ts';
import { suspensionNested } from './suspension-nested.ts';
import { suspensionUnstated } from './suspension-unstated.ts';
import { tankNotUsable } from './tank-not-usable.ts';
import { tractionBatteryWorn } from './traction-battery-worn.ts';
import { undercarriageNotOfClass } from './undercarriage-not-of-class.ts';
import { unusableUnlikely } from './unusable-unlikely.ts';

/** Envelope, stations and loading. */
export const LOADING_RULES: readonly Rule[] = [
  densityImplausible,
  seatsDiffer,
  seatLimitUnusual,
  envelopeCornerUnusual,
  envelopeNotUsable,
  envelopeMissing,
  envelopeExceededByLegalLoading,
  envelopeWithinUncertainty,
  leastLoadTooHeavy,
  pilotStationMissing,
  tankNotUsable,
  minimumSoloMassHigh,
  pilotComputesLoading,
  classUnstated,
  classContradicted,
  lateralLimitsMissing,
  lateralLimitsNotUsable,
  lateralArmMissing,
  configurationWithoutSchedule,
  suspensionGap,
  suspensionUnstated,
  cockpitStateImpossible,
  nonLiftingMassExceeded,
  tractionBatteryWorn,
  energyUnstated,
  energyShort,
  stationLimitsCrossed,
  stationAboveUsefulLoad,
  envelopeCornerUnlikely,
  unusableUnlikely,
  envelopeArmUnusual,
  seatsStaggered,
  enduranceUnusual,
  undercarriageNotOfClass,
  standardLoadingOutside,
  suspensionNested,
  powerUnstated,
];
