import { tanksAndWaterOf, unusableOf } from '../../../worker/core/calc/loading/fuel.ts';
import { loadStationsOf } from '../../../worker/core/calc/loading/load-space.ts';
import { isAtMost } from '../../../worker/core/calc/numbers/limit-met.ts';
import type { LoadingFacts } from '../../../worker/core/pack/loading-facts.ts';
import type { LoadStation } from '../../../worker/core/record/visit.ts';
import type { Formatter } from '../../../worker/core/text/formatter.ts';
import * as m from '../../../worker/core/text/generated/messages.ts';
import { factorOf } from '../../../worker/core/units/quantity.ts';
import { typedNumber } from '../typed-number.ts';

export const BURN = 'burn';

/** Field of the form: its quantity, unit and limits. */
export interface Asked {
  id: string;
  name: string;
  unit: string;
  kind: LoadStation['kind'] | 'fuel' | 'water' | 'burn';
  /** Minimum in units of the field: for a pilot, the minimum mass to fly solo; 0 if none. */
  least: number;
  most: number;
  /** kg in one unit of the field. */
  kgPerUnit: number;
}

/** Content of one field. An empty field of a passenger or baggage is zero; an impossible amount is not a number. */
export type Entry =
  | { state: 'empty' }
  | { state: 'read'; kg: number; isBeyond: boolean }
  | { state: 'unreadable' | 'negative' | 'more-than-it-holds' };

/** Typed content, by field. */
export type Typed = Readonly<Record<string, Entry>>;

/** Returns the fields of a loading: seats, baggage, tanks and fuel burn. */
export function fieldsFor({ aircraft, leastPilot, units }: LoadingFacts, fmt: Formatter): Asked[] {
  const [kg, l] = [factorOf('mass', units), factorOf('volume', units)];
  const seats = loadStationsOf(aircraft).map(({ id, name, kind, minimumMassKg, maximumMassKg }): Asked => {
    const leastKg = kind !== 'pilot' ? 0 : ((id === leastPilot?.station ? leastPilot.kg : minimumMassKg) ?? 0);
    const limits = { least: leastKg / kg, most: maximumMassKg / kg };
    return { id, name, kind, unit: fmt.unit('mass'), ...limits, kgPerUnit: kg };
  });
  const tanks = tanksAndWaterOf(aircraft).map((tank): Asked => {
    const { id, name, kind, capacityL, densityKgPerL } = tank;
    const most = Math.max(0, capacityL - unusableOf(tank)) / l;
    const named = {
      id,
      name: kind === 'fuel' ? fmt.text(m.fields_usableFuel, { name }) : name,
      unit: fmt.unit('volume'),
      kind,
    } as const;
    return { ...named, least: 0, most, kgPerUnit: l * densityKgPerL };
  });
  const fuel = tanks.filter(({ kind }) => kind === 'fuel');
  const [first] = fuel;
  if (!first) return [...seats, ...tanks];
  const most = fuel.reduce((sum, tank) => sum + tank.most, 0);
  return [...seats, ...tanks, { ...first, id: BURN, name: fmt.text(m.fields_fuelBurntFlight), kind: 'burn', most }];
}

/** Whether a field must be typed, even if 0, before a loading is found inside: pilot, every tank, and fuel burn. */
export function mustBeTyped({ kind }: Asked): boolean {
  return kind === 'pilot' || kind === 'fuel' || kind === 'burn';
}

/** Returns the hint of a field: its min. and max. */
export function hintOf({ least, most }: Asked, fmt: Formatter): string {
  const upTo = fmt.asIs(most, 1, 'most');
  return least > 0
    ? fmt.text(m.fields_leastMost, { least: fmt.asIs(least, 1, 'least'), upTo })
    : fmt.text(m.fields_most, { upTo });
}

/** Parses the content of a field; the unit may follow the number. */
export function entryOf(typed: string, { kind, unit, most, kgPerUnit }: Asked): Entry {
  const text = typed.trim();
  if (text === '') return { state: 'empty' };
  const bare = text.toLowerCase().endsWith(unit.toLowerCase()) ? text.slice(0, -unit.length).trim() : text;
  const amount = typedNumber(bare);
  if (amount === undefined) return { state: 'unreadable' };
  if (amount < 0) return { state: 'negative' };
  const isBeyond = !isAtMost(amount, most);
  // More than a tank holds is impossible, whereas a seat can be overloaded.
  if (isBeyond && (kind === 'fuel' || kind === 'water')) return { state: 'more-than-it-holds' };
  return { state: 'read', kg: amount * kgPerUnit, isBeyond };
}
