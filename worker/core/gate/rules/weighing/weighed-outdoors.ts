import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const weighedOutdoors: Rule = {
  code: 'WEIGHED_OUTDOORS',
  severity: 'caution',
  meaning: 'The aircraft was weighed outdoors',
  remedy: m.weighedOutdoors_remedy,
  source: read('CAP 562 weighing leaflet'),
  check: ({ visit }) =>
    visit.weighing?.indoors === false
      ? {
          path: ['weighing', 'indoors'],
          sentence: said(m.weighedOutdoors_aircraftWeighedOpenWhere),
        }
      : undefined,
};
