import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { instantOf } from '../../../units/calendar.ts';
import { hits } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const weighedBeforeLastModification: Rule = {
  code: 'WEIGHED_BEFORE_LAST_MODIFICATION',
  severity: 'blocks',
  meaning: 'The aircraft was weighed before the last modification was finished',
  remedy: m.weighedBeforeLastModification_remedy,
  source: read('AC 43.13-1B ch. 10 (equipment in place when weighed)'),
  check: ({ visit }) => {
    const { weighing } = visit;
    if (!weighing) return undefined;
    return hits(visit.modifications, ({ id, finishedAt, changes }) => {
      if (changes.length === 0 || instantOf(weighing.weighedAt) >= instantOf(finishedAt)) return undefined;
      return {
        path: ['weighing', 'weighedAt'],
        sentence: said(m.weighedBeforeLastModification_weighedBeforeModificationFinished, {
          weighedAt: figure.timestamp(weighing.weighedAt),
          id,
          finishedAt: figure.timestamp(finishedAt),
        }),
        data: { modification: id, weighedAt: weighing.weighedAt, finishedAt },
      };
    });
  },
};
