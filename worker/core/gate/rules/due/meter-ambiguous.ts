import { standsOpen } from '../../../calc/open-items/stands-open.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const meterAmbiguous: Rule = {
  code: 'METER_AMBIGUOUS',
  severity: 'blocks',
  meaning: 'Something comes due by hours, several meters count them, and it does not say on which it is read',
  remedy: m.meterAmbiguous_remedy,
  source: PRACTICE,
  check: ({ visit, at }) => {
    const meters = (visit.meters?.readings ?? []).filter(({ of }) => of === 'airframe').map(({ id }) => id);
    if (meters.length < 2) return [];
    return standsOpen(visit, at).flatMap(({ id, text, until, meter, kind, path }): Hit[] => {
      if (until.hours === undefined || meter !== undefined) return [];
      return [
        {
          path: kind === 'deferral' ? [...path, 'deferral'] : path,
          sentence: said(m.meterAmbiguous_notSayMeterHours, { id, text, meters: meters.join(', ') }),
          data: { id },
        },
      ];
    });
  },
};
