import * as m from '../text/generated/messages.ts';
import { type Said, said } from '../text/message.ts';
import { ARM_UNITS, factorOf, MASS_UNITS, type Quantity, type Units, unitOf, VOLUME_UNITS } from '../units/quantity.ts';

const ALL_UNITS: readonly Units[] = MASS_UNITS.flatMap((mass) =>
  ARM_UNITS.flatMap((arm) => VOLUME_UNITS.map((volume) => ({ mass, arm, volume }))),
);

/**
 * Returns the unit in which a figure of the record would be usual.
 *
 * @param value in calculation units, converted from the units of the record
 * @example meantUnit('density', 6, { mass: 'kg', arm: 'mm', volume: 'l' }, (kgPerL) => kgPerL < 1)  // 'lb/US gal'
 */
export function meantUnit(
  quantity: Quantity,
  value: number,
  units: Units,
  isUsual: (value: number) => boolean,
): string | undefined {
  const figure = value / factorOf(quantity, units);
  const stated = unitOf(quantity, units);
  const meant = ALL_UNITS.find(
    (each) => unitOf(quantity, each) !== stated && isUsual(figure * factorOf(quantity, each)),
  );
  return meant && unitOf(quantity, meant);
}

/** Returns a sentence, with the question for the unit if another one would fit. */
export function askingUnit(sentence: Said, unit: string | undefined): Said {
  return unit === undefined ? sentence : said(m.meantUnit_asked, { sentence, unit });
}
