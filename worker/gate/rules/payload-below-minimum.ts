import { isAtLeast } from '../../calc/limit-met.ts';
import { payloadAgainst } from '../../calc/payload.ts';
import { phrase } from '../../words/words.ts';
import { memory, type Rule } from '../rule.ts';

export const payloadBelowMinimum: Rule = {
  code: 'PAYLOAD_BELOW_MINIMUM',
  severity: 'blocks',
  meaning: 'Too little payload is left for what the regime asks',
  remedy: phrase`Take equipment out; see the payload line of the schedule`,
  source: memory('BCAR Section S, payload per seat and fuel'),
  check: ({ visit, results, regime, say }) => {
    const asked = regime.minimumPayload.value;
    if (!asked || !results.schedule) return [];
    const payload = payloadAgainst(visit, results.schedule.massKg, asked);
    if (isAtLeast(payload.sparePayloadKg, 0)) return [];
    return [
      {
        path: ['aircraft', 'maximumMass'],
        sentence: say.words`Payload ${say.measure('mass', payload.availableKg)} falls short of ${say.measure('mass', payload.personsKg + payload.fuelKg)} by ${say.measure('mass', -payload.sparePayloadKg)}`,
        data: { ...payload },
      },
    ];
  },
};
