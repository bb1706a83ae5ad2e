import { payloadAgainst } from '../../../calc/loading/payload.ts';
import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { memory, type Rule } from '../../rule.ts';

export const payloadBelowMinimum: Rule = {
  code: 'PAYLOAD_BELOW_MINIMUM',
  severity: 'caution',
  meaning: 'The payload left is below the minimum of the regime',
  remedy: m.payloadBelowMinimum_remedy,
  source: memory('BCAR Section S'),
  values: ['minimumPayload'],
  check: ({ visit, results, regime }) => {
    const asked = regime.minimumPayload.value;
    if (!asked || !results.schedule) return undefined;
    const payload = payloadAgainst(visit, results.schedule.massKg, asked);
    if (isAtLeast(payload.sparePayloadKg, 0)) return undefined;
    return {
      path: ['aircraft', 'maximumMass'],
      sentence: said(m.payloadBelowMinimum_payloadFallsShort, {
        available: figure.measure('mass', payload.availableKg, figure.MAX),
        persons: figure.measure('mass', payload.personsKg + payload.fuelKg, figure.MIN),
        sparePayload: figure.apart('mass', -payload.sparePayloadKg, 0)[0],
      }),
      data: { ...payload },
    };
  },
};
