import type { EquipmentKind } from '../../../record/equipment-kind.ts';
import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Kinds of item that are a product, or without which it is not aboard. */
const ITEMS: Readonly<Record<string, readonly EquipmentKind[]>> = {
  engine: ['engine', 'motor'],
  motor: ['engine', 'motor'],
  propeller: ['propeller'],
  rotor: ['rotor', 'rotor-head'],
  'rotor-head': ['rotor-head'],
  'tail-rotor': ['tail-rotor'],
  gearbox: ['gearbox', 'rotor-drive'],
  wing: ['wing', 'sail'],
  canopy: ['canopy'],
  battery: ['battery', 'traction-battery'],
  'rescue-system': ['rescue-parachute', 'rescue-rocket'],
  floats: ['float'],
};

export const meterOfAbsentProduct: Rule = {
  code: 'METER_OF_ABSENT_PRODUCT',
  severity: 'caution',
  meaning: 'A meter or counter counts a product that the aircraft does not have',
  remedy: m.meterOfAbsentProduct_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const items = new Set(results.change.after.map(({ equipmentKind }) => equipmentKind));
    const products = namedProducts(visit.aircraft);
    const hitOf = ({ id, of }: { id: string; of: string }) => {
      const kinds = ITEMS[of];
      if (!kinds || products.has(of) || kinds.some((kind) => items.has(kind))) return undefined;
      return {
        field: 'of',
        sentence: said(m.meterOfAbsentProduct_countsProduct, { id, product: termOf(of) }),
        data: { meter: id, of },
      };
    };
    return [
      ...hitsIn(['meters', 'readings'], visit.meters?.readings, hitOf),
      ...hitsIn(['meters', 'counters'], visit.meters?.counters, hitOf),
    ];
  },
};

function namedProducts({ engine, propeller, products = [] }: Visit['aircraft']): ReadonlySet<string> {
  const kinds = [
    ...(engine ? ['engine'] : []),
    ...(propeller ? ['propeller'] : []),
    ...products.map(({ kind }) => kind),
  ];
  // Meters of a motor are entered as those of an engine.
  return new Set(kinds.flatMap((kind) => (kind === 'engine' || kind === 'motor' ? ['engine', 'motor'] : [kind])));
}
