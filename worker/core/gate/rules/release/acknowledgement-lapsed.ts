import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { isOfFigures } from '../../accepted-figures.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const acknowledgementLapsed: Rule = {
  code: 'ACKNOWLEDGEMENT_LAPSED',
  severity: 'note',
  meaning: 'A caution was accepted with other figures, or without them, so the acceptance does not count',
  remedy: m.acknowledgementLapsed_remedy,
  source: PRACTICE,
  check: ({ visit, cautionFigures }) =>
    hitsIn(['release', 'acknowledgements'], visit.release?.acknowledgements, ({ code, figures: accepted = [] }) => {
      const now = cautionFigures.get(code);
      if (!now || isOfFigures(accepted, now)) return undefined;
      const shown = (figures: readonly number[]) =>
        list(
          figures.map((value) => figure.asIs(value)),
          '; ',
        );
      return {
        field: 'figures',
        sentence:
          accepted.length > 0
            ? said(m.acknowledgementLapsed_otherFigures, { code, accepted: shown(accepted), now: shown(now) })
            : said(m.acknowledgementLapsed_noFigures, { code, now: shown(now) }),
        data: { code },
      };
    }),
};
