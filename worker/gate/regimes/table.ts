import { generic } from './generic.ts';
import type { Regime } from './regime.ts';

/** Every regime that a record may name. */
export const REGIMES: readonly Regime[] = [generic];

/** The regime of that name; the generic one stands in for an unknown name, which is itself a finding. */
export function regimeNamed(id: string): Regime {
  return REGIMES.find((regime) => regime.id === id) ?? generic;
}
