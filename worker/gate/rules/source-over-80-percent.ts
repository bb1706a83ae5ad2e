import { isWatched, needsWatching, warnsInTime } from '../../calc/electrical/monitoring.ts';
import { isAtMost } from '../../calc/limit-met.ts';
import type { Printer } from '../../text/print.ts';
import type { Electrical } from '../../visit/visit.ts';
import { phrase } from '../../words/words.ts';
import { PHASE_NAMES } from '../phase-names.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const sourceOver80Percent: Rule = {
  code: 'SOURCE_OVER_80_PERCENT',
  severity: 'caution',
  meaning: 'The continuous load is over 80 % of what the sources give, and nothing shows the crew the load',
  remedy: phrase`Reduce the load, or fit a placard, an instrument or a low-voltage warning by which it is kept down, and name it`,
  source: read('AC 43.13-1B 11-35a: 80 % of the generator without placards or monitoring'),
  check: ({ visit, results, say }) => {
    const { electrical } = visit;
    if (!electrical || electrical.sources.every(isWatched) || warnsInTime(electrical)) return [];
    return (results.electrical?.phases ?? []).flatMap(({ phase, continuousA, capacityA }): Hit[] => {
      if (capacityA === undefined || !isAtMost(continuousA, capacityA) || !needsWatching(continuousA, capacityA))
        return [];
      return [
        {
          path: ['electrical', 'sources'],
          sentence: say.words`${say.term(PHASE_NAMES[phase])}: continuous load ${say.plain(continuousA, 1)} A is over 80 % of ${say.plain(capacityA, 1)} A; ${whatIsFitted(say, electrical)}`,
          data: { phase, continuousA, capacityA },
        },
      ];
    });
  },
};

/** What there is to watch the load by, none of which suffices. */
function whatIsFitted(say: Printer, { sources, lowVoltageWarning }: Electrical): string {
  const unwatched = sources
    .filter((source) => !isWatched(source))
    .map(({ name, isMonitored }) =>
      isMonitored ? say.words`what ${name} is watched by is not stated` : say.words`nothing watches ${name}`,
    );
  return [...unwatched, say.words`low-voltage warning ${stateOf(say, lowVoltageWarning)}`].join(', ');
}

function stateOf(say: Printer, warning: Electrical['lowVoltageWarning']): string {
  if (!warning) return say.words`not stated`;
  if (!warning.isFitted) return say.words`not fitted`;
  return warning.setPointV === undefined
    ? say.words`without a set point`
    : say.words`at ${say.plain(warning.setPointV, 1)} V`;
}
