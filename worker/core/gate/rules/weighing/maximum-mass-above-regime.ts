import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import type { Aircraft } from '../../../record/visit.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import type { Regime } from '../../regimes/regime.ts';
import { type Rule, read } from '../../rule.ts';

/** Undercarriages on water. */
const ON_WATER: ReadonlySet<Aircraft['undercarriage']> = new Set(['floats', 'amphibian'] as const);
const ROTORCRAFT: ReadonlySet<Aircraft['class']> = new Set(['helicopter', 'gyroplane'] as const);

export const maximumMassAboveRegime: Rule = {
  code: 'MAXIMUM_MASS_ABOVE_REGIME',
  severity: 'blocks',
  meaning: 'The maximum mass is above that of the aircraft to which the regime applies',
  remedy: m.maximumMassAboveRegime_remedy,
  source: read('ML.1(a) and SI 2021/879 art. 10 (masses of the aircraft covered); values with the regime'),
  check: ({ visit: { aircraft }, regime }) => {
    const capKg = capOf(aircraft, regime);
    if (capKg === null || isAtMost(aircraft.maximumMassKg, capKg)) return undefined;
    const [mass, limit] = figure.apart('mass', aircraft.maximumMassKg, capKg);
    return {
      path: ['aircraft', 'maximumMass'],
      sentence: said(m.maximumMassAboveRegime_above, { mass, limit, regime: regime.id }),
      data: { maximumKg: aircraft.maximumMassKg, capKg },
    };
  },
};

function capOf({ class: of, undercarriage }: Aircraft, regime: Regime): number | null {
  const onWater = ON_WATER.has(undercarriage) ? regime.massCapWaterKg.value : null;
  const rotorcraft = ROTORCRAFT.has(of) ? regime.massCapRotorcraftKg.value : null;
  return onWater ?? rotorcraft ?? regime.massCapKg.value;
}
