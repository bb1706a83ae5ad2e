import { isAtLeast } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { describeLoading } from '../describe-loading.ts';
import { type Rule, type RuleInput, read } from '../rule.ts';

export const envelopeExceededByLegalLoading: Rule = {
  code: 'ENVELOPE_EXCEEDED_BY_LEGAL_LOADING',
  severity: 'blocks',
  meaning: 'A loading that every stated limit allows lies outside the envelope',
  remedy: phrase`Add a loading limit or placard that forbids it, or correct station limits or ballast`,
  source: read('AC 43.13-1B ch. 10 (adverse-loaded checks)'),
  check: ({ visit, results, say }) => {
    const margins = results.loading?.extremes?.margins ?? [];
    return margins
      .filter(({ margin }) => !isAtLeast(margin, 0))
      .map(({ side, margin, loading, limit }) => ({
        path: ['aircraft', 'envelope'],
        sentence: `${outsideSentence(side, margin, limit, say)}: ${describeLoading(visit, loading, say)}`,
        data: { side, margin, limit, massKg: loading.massKg },
      }));
  },
};

function outsideSentence(side: string, margin: number, limit: number, say: RuleInput['say']): string {
  if (side === 'below')
    return say.words`A legal loading is ${say.measure('mass', -margin)} lighter than the envelope reaches, ${say.measure('mass', limit)}`;
  if (side === 'above')
    return say.words`A legal loading is ${say.measure('mass', -margin)} heavier than the envelope reaches, ${say.measure('mass', limit)}`;
  if (side === 'forward')
    return say.words`A legal loading is ${say.measure('arm', -margin)} forward of the limit of ${say.measure('arm', limit)}`;
  return say.words`A legal loading is ${say.measure('arm', -margin)} aft of the limit of ${say.measure('arm', limit)}`;
}
