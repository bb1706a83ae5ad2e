import type { Cause } from '../calc/weighing/causes/causes-result.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { type Said, said, type Value } from '../text/message.ts';
import type { Quantity } from '../units/quantity.ts';

/** Returns a figure with its limits of error. */
export function plusMinus(quantity: Quantity, value: number, limit: number): Said {
  return said(m.cause_plusMinus, {
    value: figure.number(quantity, value),
    limit: figure.measure(quantity, limit),
  });
}

/** Returns a cause of a mismatch in words, with its figures. */
export function causeText(cause: Cause): Said {
  const { of = '', and, run } = cause;
  switch (cause.kind) {
    case 'pounds-for-kilograms':
      return said(m.cause_poundsForKilograms);
    case 'kilograms-for-pounds':
      return said(m.cause_kilogramsForPounds);
    case 'reading-slip':
      return run === undefined
        ? said(m.cause_readings, { of, ...insteadOf(cause) })
        : said(m.cause_reading, { of, run: run + 1, ...insteadOf(cause) });
    case 'points-exchanged':
      return said(m.cause_pointsExchanged, { of, and: and ?? '' });
    case 'tare-forgotten':
      return cause.of === undefined
        ? said(m.cause_tareForgottenEverywhere, { mass: massOf(cause) })
        : said(m.cause_tareForgotten, { of, mass: massOf(cause) });
    case 'tare-twice':
      return cause.of === undefined ? said(m.cause_tareTwiceEverywhere) : said(m.cause_tareTwice, { of });
    case 'fuel-more':
      return said(m.cause_fuelMore, { of, volume: volumeOf(cause) });
    case 'fuel-less':
      return said(m.cause_fuelLess, { of, volume: volumeOf(cause) });
    case 'oil-out':
      return said(m.cause_oilOut, { mass: massOf(cause) });
    case 'oil-in':
      return said(m.cause_oilIn, { mass: massOf(cause) });
    case 'loose-item':
      return said(m.cause_looseItem, { of, mass: massOf(cause) });
    case 'still-aboard':
      return said(m.cause_stillAboard, { of, mass: massOf(cause) });
    case 'not-aboard':
      return said(m.cause_notAboard, { of, mass: massOf(cause) });
    case 'not-moved':
      return said(m.cause_notMoved, { of });
    case 'item-out':
      return said(m.cause_itemOut, { of, mass: massOf(cause) });
    case 'item-mass-unit':
      return said(m.cause_mass, { of, ...insteadOf(cause) });
    case 'item-arm':
    case 'point-arm':
    case 'point-arm-slip':
      return and === undefined
        ? said(m.cause_arm, { of, ...insteadOf(cause) })
        : said(m.cause_arms, { of, and, ...insteadOf(cause) });
    case 'scale-zero':
      return said(m.cause_scaleZero, { of, mass: massOf(cause) });
    case 'growth':
      return said(m.cause_growth, { mass: massOf(cause) });
    case 'level':
      return said(m.cause_level, { angle: figure.plain(Math.abs(cause.angleDeg ?? 0), 1) });
  }
}

function massOf({ massKg = 0, limitKg }: Cause): Value {
  const size = Math.abs(massKg);
  return limitKg === undefined ? figure.measure('mass', size) : plusMinus('mass', size, limitKg);
}

function volumeOf({ volumeL = 0, limitL = 0 }: Cause): Value {
  return plusMinus('volume', Math.abs(volumeL), limitL);
}

function insteadOf({ recorded }: Cause): { value: Value; instead: Value } {
  const { quantity, value, instead } = recorded ?? { quantity: 'mass', value: 0, instead: 0 };
  return { value: figure.measure(quantity, value), instead: figure.measure(quantity, instead) };
}
