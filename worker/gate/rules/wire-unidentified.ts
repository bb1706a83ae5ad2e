import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const wireUnidentified: Rule = {
  code: 'WIRE_UNIDENTIFIED',
  severity: 'blocks',
  meaning: 'A wire found in the aircraft is not identified, or nothing was decided about it',
  remedy: phrase`Trace it end to end; then keep and mark it, cap it, or take it out`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.wiring?.found ?? []).flatMap(({ id, from, to, decision, identifiedBy }, index): Hit[] => {
      const isKept = decision === 'traced' || decision === 'retained';
      if (decision !== 'unidentified' && !(isKept && identifiedBy === 'not-identified')) return [];
      return [
        {
          path: ['wiring', 'found', index, 'decision'],
          sentence: say.words`Wire ${id}, from ${from} to ${to}, is not identified`,
          data: { wire: id },
        },
      ];
    }),
};
