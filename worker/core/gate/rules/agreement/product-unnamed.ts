import { isDriven } from '../../../record/driven.ts';
import type { EquipmentKind } from '../../../record/equipment-kind.ts';
import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { listedPath } from '../../listed-path.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const productUnnamed: Rule = {
  code: 'PRODUCT_UNNAMED',
  severity: 'caution',
  meaning: 'The equipment list has an engine, motor or propeller that the aircraft data do not name',
  remedy: m.productUnnamed_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hits(results.change.after, ({ id, name, equipmentKind }) =>
      isNamed(visit.aircraft, equipmentKind)
        ? undefined
        : {
            path: listedPath(visit, results, id),
            sentence: said(m.productUnnamed_notInAircraft, { item: id, name }),
            data: { item: id },
          },
    ),
};

/** Whether the aircraft data name a product of this kind; of other kinds nothing is required. */
function isNamed(aircraft: Visit['aircraft'], kind: EquipmentKind | undefined): boolean {
  const { propeller, products = [] } = aircraft;
  if (kind === 'propeller') return propeller !== undefined || products.some((each) => each.kind === 'propeller');
  return (kind !== 'engine' && kind !== 'motor') || isDriven(aircraft);
}
