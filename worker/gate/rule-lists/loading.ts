import type { Rule } from '../rule.ts';
import { envelopeExceededByLegalLoading } from '../rules/envelope-exceeded-by-legal-loading.ts';
import { envelopeMissing } from '../rules/envelope-missing.ts';
import { envelopeNotUsable } from '../rules/envelope-not-usable.ts';
import { envelopeWithinUncertainty } from '../rules/envelope-within-uncertainty.ts';
import { leastLoadTooHeavy } from '../rules/least-load-too-heavy.ts';
import { loadingLimitsCross } from '../rules/loading-limits-cross.ts';
import { minimumSoloMassHigh } from '../rules/minimum-solo-mass-high.ts';
import { pilotStationMissing } from '../rules/pilot-station-missing.ts';
import { tankNotUsable } from '../rules/tank-not-usable.ts';

/** Envelope, stations and loading. */
export const LOADING_RULES: readonly Rule[] = [
  envelopeNotUsable,
  envelopeMissing,
  envelopeExceededByLegalLoading,
  envelopeWithinUncertainty,
  loadingLimitsCross,
  leastLoadTooHeavy,
  pilotStationMissing,
  tankNotUsable,
  minimumSoloMassHigh,
];
