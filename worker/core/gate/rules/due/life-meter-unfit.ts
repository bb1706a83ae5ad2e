import type { EquipmentKind } from '../../../record/equipment-kind.ts';
import type { ProductKind } from '../../../record/product.ts';
import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

type Metered = NonNullable<Visit['meters']>['readings'][number]['of'];

/** Product whose hours count for an item or a product of a kind. */
const METERED: Partial<Record<EquipmentKind | ProductKind, Metered>> = {
  engine: 'engine',
  motor: 'engine',
  propeller: 'propeller',
  rotor: 'rotor',
  'rotor-head': 'rotor',
  gearbox: 'gearbox',
  wing: 'wing',
  sail: 'wing',
  canopy: 'canopy',
};

export const lifeMeterUnfit: Rule = {
  code: 'LIFE_METER_UNFIT',
  severity: 'caution',
  meaning: 'A term of a product counts hours by the meter of another one',
  remedy: m.lifeMeterUnfit_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const kinds = new Map(results.change.after.map(({ id, equipmentKind }) => [id, equipmentKind]));
    const meters = visit.meters?.readings ?? [];
    return hitsIn(['lives', 'items'], visit.lives?.items, ({ id, item, of, product, interval, meter }) => {
      const kind = product?.kind ?? (of === undefined ? undefined : kinds.get(of));
      const due = kind && METERED[kind];
      if (!due || interval.hours === undefined) return undefined;
      const used = meters.find((reading) => reading.id === meter)?.of ?? 'airframe';
      const own = meters.find((reading) => reading.of === due);
      if (used === due || (used === 'airframe' && !own)) return undefined;
      return {
        field: 'meter',
        sentence: said(m.lifeMeterUnfit_counts, { id, item, used: termOf(used), due: termOf(due) }),
        data: { life: id, used, due },
      };
    });
  },
};
