import { isWatched, needsWatching, warnsInTime } from '../../calc/electrical/monitoring.ts';
import { printNumber } from '../../units/rounding.ts';
import type { Electrical } from '../../visit/visit.ts';
import { PHASE_NAMES } from '../phase-names.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const sourceOver80Percent: Rule = {
  code: 'SOURCE_OVER_80_PERCENT',
  severity: 'caution',
  meaning: 'The continuous load is over 80 % of what the sources give, and nothing shows the crew the load',
  remedy:
    'Reduce the load, or fit a placard, an instrument or a low-voltage warning by which it is kept down, and name it',
  source: read('AC 43.13-1B 11-35a: 80 % of the generator without placards or monitoring'),
  check: ({ visit, results }) => {
    const { electrical } = visit;
    if (!electrical || electrical.sources.every(isWatched) || warnsInTime(electrical)) return [];
    return (results.electrical?.phases ?? []).flatMap(({ phase, continuousA, capacityA }): Hit[] => {
      if (capacityA === undefined || continuousA > capacityA || !needsWatching(continuousA, capacityA)) return [];
      return [
        {
          path: ['electrical', 'sources'],
          sentence: `${PHASE_NAMES[phase]}: continuous load ${printNumber(continuousA, 1)} A is over 80 % of ${printNumber(capacityA, 1)} A; ${whatIsFitted(electrical)}`,
          data: { phase, continuousA, capacityA },
        },
      ];
    });
  },
};

/** What there is to watch the load by, none of which suffices. */
function whatIsFitted({ sources, lowVoltageWarning }: Electrical): string {
  const unwatched = sources
    .filter((source) => !isWatched(source))
    .map(({ name, isMonitored }) =>
      isMonitored ? `what ${name} is watched by is not stated` : `nothing watches ${name}`,
    );
  return [...unwatched, `low-voltage warning ${stateOf(lowVoltageWarning)}`].join(', ');
}

function stateOf(warning: Electrical['lowVoltageWarning']): string {
  if (!warning) return 'not stated';
  if (!warning.isFitted) return 'not fitted';
  return warning.setPointV === undefined ? 'without a set point' : `at ${printNumber(warning.setPointV, 1)} V`;
}
