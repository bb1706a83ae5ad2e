import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const energyUnstated: Rule = {
  code: 'ENERGY_UNSTATED',
  severity: 'caution',
  meaning: 'Traction batteries have no measured health, or no powers from which an endurance follows',
  remedy: m.energyUnstated_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft } }) => {
    const index = (aircraft.energyStores ?? []).findIndex(({ healthPercent }) => healthPercent === undefined);
    if (index >= 0)
      return {
        path: ['aircraft', 'energyStores', index, 'healthPercent'],
        sentence: said(m.energyUnstated_health, { name: aircraft.energyStores?.[index]?.name ?? '' }),
      };
    return aircraft.energyStores && !aircraft.energyUse
      ? { path: ['aircraft', 'energyUse'], sentence: said(m.energyUnstated_powers) }
      : undefined;
  },
};
