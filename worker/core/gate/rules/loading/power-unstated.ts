import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { isOfWeighingAlone } from '../../of-weighing-alone.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const powerUnstated: Rule = {
  code: 'POWER_UNSTATED',
  severity: 'caution',
  meaning: 'Engine, fuel flow, tank and propeller belong together, and one of them is not stated',
  remedy: m.powerUnstated_remedy,
  source: PRACTICE,
  check: ({ visit, regime }) => {
    const { aircraft } = visit;
    // A weighing alone says nothing of how far the fuel lasts.
    if (isOfWeighingAlone({ visit, regime })) return undefined;
    const { engine, propeller, products = [], stations } = aircraft;
    const has = (kind: string): boolean => products.some((product) => product.kind === kind);
    const hasTank = stations.some(({ kind }) => kind === 'fuel');
    const hasEngine = engine !== undefined || has('engine');
    const hasPower = hasEngine || has('motor');
    const missing = [
      ...(hasTank && !hasEngine ? [m.powerUnstated_engine] : []),
      ...(hasEngine && !hasTank ? [m.powerUnstated_tank] : []),
      ...(engine && hasTank && engine.fuelFlowLPerH === undefined ? [m.powerUnstated_fuelFlow] : []),
      ...(hasPower && propeller === undefined && !has('propeller') && aircraft.class !== 'helicopter'
        ? [m.powerUnstated_propeller]
        : []),
    ];
    if (missing.length === 0) return undefined;
    return {
      path: ['aircraft', 'engine'],
      sentence: said(m.powerUnstated_missing, { missing: list(missing.map((each) => said(each))) }),
      data: { count: missing.length },
    };
  },
};
