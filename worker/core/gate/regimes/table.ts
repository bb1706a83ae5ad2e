import { euPartMl } from './eu-part-ml.ts';
import { generic } from './generic.ts';
import type { Regime } from './regime.ts';
import { ukMicrolight } from './uk-microlight.ts';
import { usExperimental } from './us-experimental.ts';

/** Every regime that a record may name. */
export const REGIMES: readonly Regime[] = [generic, usExperimental, euPartMl, ukMicrolight];

/** The regime of that name; the generic one stands in for an unknown name, which is itself a finding. */
export function regimeNamed(id: string): Regime {
  return REGIMES.find((regime) => regime.id === id) ?? generic;
}
