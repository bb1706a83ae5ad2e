import type { EquipmentKind } from '../../../record/equipment-kind.ts';
import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { isNumbered, namesNumber } from '../../same-number.ts';

type Power = 'engine' | 'motor' | 'propeller';
const POWER: ReadonlySet<EquipmentKind | undefined> = new Set<Power>(['engine', 'motor', 'propeller']);

export const productSerialDiffers: Rule = {
  code: 'PRODUCT_SERIAL_DIFFERS',
  severity: 'blocks',
  meaning: 'Engine, motor or propeller in the equipment list has a serial number that the aircraft data do not name',
  remedy: m.productSerialDiffers_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft }, results }) =>
    hits(results.change.after, ({ id, name, equipmentKind, serial }) => {
      if (!POWER.has(equipmentKind) || !isNumbered(serial)) return undefined;
      const { serials, path } = named(aircraft, equipmentKind === 'propeller' ? ['propeller'] : ['engine', 'motor']);
      if (serials.length === 0 || serials.some((stated) => namesNumber(stated, serial))) return undefined;
      return {
        path,
        sentence: said(m.productSerialDiffers_itemHasSerial, { item: id, name, serial, stated: list(serials) }),
        data: { item: id, serial, stated: serials.join(', ') },
      };
    }),
};

/** Serial numbers of the products of some kinds in the data of the aircraft, and the path of the first one. */
function named({ engine, propeller, products = [] }: Visit['aircraft'], kinds: readonly string[]) {
  const own = kinds.includes('propeller')
    ? { product: propeller, path: ['aircraft', 'propeller', 'serial'] }
    : { product: engine, path: ['aircraft', 'engine', 'serial'] };
  const index = products.findIndex(({ kind }) => kinds.includes(kind));
  const listed = products.filter(({ kind }) => kinds.includes(kind)).map(({ serial }) => serial);
  return {
    serials: [...(own.product ? [own.product.serial] : []), ...listed],
    path: own.product ? own.path : ['aircraft', 'products', index, 'serial'],
  };
}
