import { instantOf } from '../../units/calendar.ts';
import type { Change } from '../../visit/visit.ts';
import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const compassSwingOwed: Rule = {
  code: 'COMPASS_SWING_OWED',
  severity: 'blocks',
  meaning: 'Electrical equipment near the compass changed and it was not swung since',
  remedy: phrase`Swing the compass`,
  source: read('AC 43.13-1B para 12-37 (a swing is due after a change of the electrical system)'),
  check: ({ visit, say }) => {
    const changed = (visit.modifications ?? []).filter(({ changes }) => changes.some(isElectrical));
    const last = changed
      .map(({ finishedAt }) => finishedAt)
      .sort((a, b) => instantOf(a) - instantOf(b))
      .at(-1);
    if (!visit.electrical && !visit.wiring && !visit.surveillance) return [];
    if (last === undefined || (visit.compass && instantOf(visit.compass.swungAt) >= instantOf(last))) return [];
    return [
      {
        path: ['compass'],
        sentence: say.words`Equipment was changed until ${say.moment(last)}; the compass was not swung after that`,
        data: { last },
      },
    ];
  },
};

/** Anything put in or moved: on a small aircraft nothing electrical is far from the compass. */
function isElectrical({ kind }: Change): boolean {
  return kind === 'installed' || kind === 'replaced' || kind === 'relocated';
}
