import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { isSlip } from '../../is-slip.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { isNumbered, namesNumber } from '../../same-number.ts';

export const productNumberNear: Rule = {
  code: 'PRODUCT_NUMBER_NEAR',
  severity: 'caution',
  meaning: 'The model or serial number of a product differs by one slip from that of an item or a part',
  remedy: m.productNumberNear_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const entries = [...results.change.after, ...(visit.parts ?? [])];
    const listed = {
      model: entries.flatMap(({ partNumber }) => partNumber ?? []),
      serial: entries.flatMap((entry) => ('serialOrBatch' in entry ? entry.serialOrBatch : undefined) ?? []),
    };
    listed.serial.push(...results.change.after.flatMap(({ serial }) => serial ?? []));
    return hits(numbersOf(visit.aircraft), ({ field, number, path }) => {
      if (!isNumbered(number) || listed[field].some((other) => namesNumber(other, number))) return undefined;
      const other = listed[field].find((each) => isSlip(number, each));
      if (other === undefined) return undefined;
      return { path, sentence: said(m.productNumberNear_differs, { number, other }), data: { number, other } };
    });
  },
};

interface Stated {
  field: 'model' | 'serial';
  number: string | undefined;
  path: readonly (string | number)[];
}

/** Models and serial numbers of the products of an aircraft. */
function numbersOf({ engine, propeller, products = [], energyStores = [] }: Visit['aircraft']): Stated[] {
  const parts = [
    { of: engine, at: ['engine'] },
    { of: propeller, at: ['propeller'] },
    ...products.map((of, index) => ({ of, at: ['products', index] })),
    ...energyStores.map((of, index) => ({ of, at: ['energyStores', index] })),
  ];
  return parts.flatMap(({ of, at }): Stated[] => {
    const path = ['aircraft', ...at];
    const model = of && 'model' in of ? of.model : undefined;
    return [
      { field: 'model', number: model, path: [...path, 'model'] },
      { field: 'serial', number: of?.serial, path: [...path, 'serial'] },
    ];
  });
}
