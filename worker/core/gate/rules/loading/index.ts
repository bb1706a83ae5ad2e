import type { Rule } from '../../rule.ts';
import { envelopeExceededByLegalLoading } from './envelope-exceeded-by-legal-loading.ts';
import { envelopeMissing } from './envelope-missing.ts';
import { envelopeNotUsable } from './envelope-not-usable.ts';
import { envelopeWithinUncertainty } from './envelope-within-uncertainty.ts';
import { leastLoadTooHeavy } from './least-load-too-heavy.ts';
import { minimumSoloMassHigh } from './minimum-solo-mass-high.ts';
import { pilotStationMissing } from './pilot-station-missing.ts';
import { tankNotUsable } from './tank-not-usable.ts';

/** Envelope, stations and loading. */
export const LOADING_RULES: readonly Rule[] = [
  envelopeNotUsable,
  envelopeMissing,
  envelopeExceededByLegalLoading,
  envelopeWithinUncertainty,
  leastLoadTooHeavy,
  pilotStationMissing,
  tankNotUsable,
  minimumSoloMassHigh,
];
