import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const meterAmbiguous: Rule = {
  code: 'METER_AMBIGUOUS',
  severity: 'blocks',
  meaning: 'An item is due by hours and names none of several meters',
  remedy: m.meterAmbiguous_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const meters = (visit.meters?.readings ?? []).filter(({ of }) => of === 'airframe').map(({ id }) => id);
    if (meters.length < 2) return undefined;
    return hits(results.open.stated, ({ id, text, until, meter, kind, path }) => {
      if (until.hours === undefined || meter !== undefined) return undefined;
      return {
        path: kind === 'deferral' ? [...path, 'deferral'] : path,
        sentence: said(m.meterAmbiguous_notSayMeterHours, { id, text, meters: meters.join(', ') }),
        data: { id },
      };
    });
  },
};
