import { instantOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const weighedBeforeLastModification: Rule = {
  code: 'WEIGHED_BEFORE_LAST_MODIFICATION',
  severity: 'blocks',
  meaning: 'The aircraft was weighed before the last modification was finished',
  remedy: phrase`Weigh again, or use the computed schedule and take the weighing out`,
  source: read('AC 43.13-1B ch. 10 (equipment in place when weighed)'),
  check: ({ visit, say }) => {
    const { weighing } = visit;
    if (!weighing) return [];
    return (visit.modifications ?? []).flatMap(({ id, finishedAt, changes }): Hit[] => {
      if (changes.length === 0 || instantOf(weighing.weighedAt) >= instantOf(finishedAt)) return [];
      return [
        {
          path: ['weighing', 'weighedAt'],
          sentence: say.words`Weighed ${say.moment(weighing.weighedAt)}, before modification ${id} was finished ${say.moment(finishedAt)}`,
          data: { modification: id, weighedAt: weighing.weighedAt, finishedAt },
        },
      ];
    });
  },
};
