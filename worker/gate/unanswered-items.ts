import type { OpenItem } from '../calc/open-items/open-item.ts';
import type { Hit, RuleInput } from './rule.ts';

/** What earlier packs left open and the record says nothing of. */
export function unansweredItems({ results, say }: RuleInput, isWanted: (item: OpenItem) => boolean): Hit[] {
  return results.open.unanswered.filter(isWanted).map(({ item = '', text }) => ({
    path: '/carried',
    sentence: say.words`${item} stands open, “${text}”, and this record does not say what became of it`,
    data: { item },
  }));
}
