import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const oilStateUnstated: Rule = {
  code: 'OIL_STATE_UNSTATED',
  severity: 'blocks',
  meaning: 'The weighing does not say whether the oil was aboard',
  remedy: phrase`State it; where it was drained, enter the oil among the items missing`,
  source: read('AC 43.13-1B ch. 10 (oil convention)'),
  check: ({ visit, say }) => {
    const { weighing } = visit;
    if (!weighing || !visit.aircraft.engine) return [];
    if (weighing.oilState === undefined)
      return [
        { path: ['weighing', 'oilState'], sentence: say.words`The weighing does not say whether the oil was aboard` },
      ];
    const added = (weighing.itemsMissing ?? []).some(({ name }) => /\boil|öl/iu.test(name));
    if (weighing.oilState === 'full' || added) return [];
    return [
      {
        path: ['weighing', 'itemsMissing'],
        sentence: say.words`The oil state is “${say.term(weighing.oilState)}”, but no oil is among the items missing`,
      },
    ];
  },
};
