import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const foundWireIncomplete: Rule = {
  code: 'FOUND_WIRE_INCOMPLETE',
  severity: 'caution',
  meaning: 'A found wire has no voltage state, or if removed no gauge, length or arm',
  remedy: m.foundWireIncomplete_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['wiring', 'found'], visit.wiring?.found, ({ id, from, to, decision, isLive, gauge, lengthM, armMm }) => {
      const missing =
        decision === 'removed'
          ? [
              ...(gauge === undefined ? [m.foundWireIncomplete_gauge] : []),
              ...(lengthM === undefined ? [m.foundWireIncomplete_length] : []),
              ...(armMm === undefined ? [m.foundWireIncomplete_arm] : []),
            ]
          : isLive === undefined
            ? [m.foundWireIncomplete_isLive]
            : [];
      if (missing.length === 0) return undefined;
      return {
        sentence: said(m.foundWireIncomplete_missing, {
          id,
          from,
          to,
          missing: list(missing.map((each) => said(each))),
        }),
        data: { wire: id, count: missing.length },
      };
    }),
};
