import { isAtMost } from '../calc/numbers/limit-met.ts';
import type { Aircraft } from '../record/visit.ts';
import type { Figure } from '../text/figure.ts';
import * as figure from '../text/figure.ts';
import { type Message, said } from '../text/message.ts';
import type { Regime, RegimeValue } from './regimes/regime.ts';
import type { Hit, RuleInput } from './rule.ts';

/** Undercarriages on water. */
const ON_WATER: ReadonlySet<Aircraft['undercarriage']> = new Set(['floats', 'amphibian'] as const);
const ROTORCRAFT: ReadonlySet<Aircraft['class']> = new Set(['helicopter', 'gyroplane'] as const);

/** Values of a regime that limit the maximum mass of the aircraft that it covers. */
export const MASS_CAPS = ['massCapKg', 'massCapRotorcraftKg', 'massCapWaterKg'] as const satisfies RegimeValue[];
type MassCap = (typeof MASS_CAPS)[number];

/** Reports a maximum mass above that of the aircraft to which the regime applies. */
export function aboveMassCap(
  { visit: { aircraft }, regime }: RuleInput,
  message: Message<{ mass: Figure; limit: Figure; regime: string }>,
): Hit | undefined {
  const capKg = capOf(aircraft, regime);
  if (capKg === null || isAtMost(aircraft.maximumMassKg, capKg)) return undefined;
  const [mass, limit] = figure.apart('mass', aircraft.maximumMassKg, capKg);
  return {
    path: ['aircraft', 'maximumMass'],
    sentence: said(message, { mass, limit, regime: regime.id }),
    data: { maximumKg: aircraft.maximumMassKg, capKg },
  };
}

const capOf = (aircraft: Aircraft, regime: Regime): number | null => regime[massCapOf(aircraft, regime)].value;

/** Returns the name of the value that limits the maximum mass of an aircraft. */
export function massCapOf({ class: of, undercarriage }: Aircraft, regime: Regime): MassCap {
  if (ON_WATER.has(undercarriage) && regime.massCapWaterKg.value !== null) return 'massCapWaterKg';
  return ROTORCRAFT.has(of) && regime.massCapRotorcraftKg.value !== null ? 'massCapRotorcraftKg' : 'massCapKg';
}
