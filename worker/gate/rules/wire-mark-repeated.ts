import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const wireMarkRepeated: Rule = {
  code: 'WIRE_MARK_REPEATED',
  severity: 'blocks',
  meaning: 'Two wires have the same mark',
  remedy: phrase`Give each wire a mark of its own`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const { wires = [], found = [] } = visit.wiring ?? {};
    const marked = [
      ...wires.map(({ mark, change }, index) => ({
        mark: change === 'removed' ? undefined : mark,
        path: ['wiring', 'wires', index, 'mark'],
      })),
      ...found.map(({ mark, decision }, index) => ({
        mark: decision === 'removed' ? undefined : mark,
        path: ['wiring', 'found', index, 'mark'],
      })),
    ];
    const seen = new Set<string>();
    return marked.flatMap(({ mark, path }): Hit[] => {
      if (mark === undefined) return [];
      if (seen.has(mark))
        return [{ path, sentence: say.words`Mark ${mark} stands on more than one wire`, data: { mark } }];
      seen.add(mark);
      return [];
    });
  },
};
