import { euPartMl } from './eu-part-ml.ts';
import { euPartMlGlider } from './eu-part-ml-glider.ts';
import { generic } from './generic.ts';
import type { Regime } from './regime.ts';
import { ukMicrolight } from './uk-microlight.ts';
import { usExperimental } from './us-experimental.ts';

/** All regimes. */
export const REGIMES: readonly Regime[] = [generic, usExperimental, euPartMl, euPartMlGlider, ukMicrolight];

/** Finds a regime by name. An unknown name, which is a finding, gives the generic one. */
export function regimeNamed(id: string): Regime {
  return REGIMES.find((regime) => regime.id === id) ?? generic;
}
