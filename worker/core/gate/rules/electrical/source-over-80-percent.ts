import { isWatched, needsWatching, UNWATCHED_SHARE, warnsInTime } from '../../../calc/electrical/monitoring.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import type { Electrical } from '../../../record/visit.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, said, type Value } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PHASE_NAMES } from '../../phase-names.ts';
import { type Rule, read } from '../../rule.ts';

export const sourceOver80Percent: Rule = {
  code: 'SOURCE_OVER_80_PERCENT',
  severity: 'caution',
  meaning: 'The continuous load is over 80 % of the source capacity, and the crew cannot see it',
  remedy: m.sourceOver80Percent_remedy,
  source: read('AC 43.13-1B 11-35a: 80 % of the generator without placards or monitoring'),
  check: ({ visit, results }) => {
    const { electrical } = visit;
    if (!electrical || electrical.sources.every(isWatched) || warnsInTime(electrical)) return undefined;
    return hits(results.electrical?.phases, ({ phase, continuousA, capacityA }) => {
      if (capacityA === undefined || !isAtMost(continuousA, capacityA) || !needsWatching(continuousA, capacityA))
        return undefined;
      return {
        path: ['electrical', 'sources'],
        sentence: said(m.sourceOver80Percent_continuousLoadOver80, {
          phaseNames: said(PHASE_NAMES[phase]),
          continuousA: figure.plainApart(continuousA, UNWATCHED_SHARE * capacityA, 1)[0],
          capacityA: figure.plain(capacityA, 1),
          whatIsFitted: whatIsFitted(electrical),
        }),
        data: { phase, continuousA, capacityA },
      };
    });
  },
};

/** Monitoring of the load as recorded; none of it is sufficient. */
function whatIsFitted({ sources, lowVoltageWarning }: Electrical): Value {
  const unwatched = sources
    .filter((source) => !isWatched(source))
    .map(({ name, isMonitored }) =>
      isMonitored
        ? said(m.sourceOver80Percent_whatWatchedNotStated, { name })
        : said(m.sourceOver80Percent_nothingWatches, { name }),
    );
  return list([
    ...unwatched,
    said(m.sourceOver80Percent_lowVoltageWarning, { lowVoltageWarning: stateOf(lowVoltageWarning) }),
  ]);
}

function stateOf(warning: Electrical['lowVoltageWarning']): Value {
  if (!warning) return said(m.notStated);
  if (!warning.isFitted) return said(m.sourceOver80Percent_notFitted);
  return warning.setPointV === undefined
    ? said(m.sourceOver80Percent_withoutSetPoint)
    : said(m.sourceOver80Percent_v, { setPointV: figure.plain(warning.setPointV, 1) });
}
