import type { ExceededLimit } from '../calc/loading/verdict.ts';
import { phrase } from '../words/words.ts';

type OfAircraft = Exclude<ExceededLimit, { id: string }>;

/** Mass limits of the aircraft, inside a sentence. */
export const MASS_LIMIT_NAMES: Readonly<Record<OfAircraft['kind'], string>> = {
  'zero-fuel-mass': phrase`maximum zero-fuel mass`,
  'landing-mass': phrase`maximum landing mass`,
};
