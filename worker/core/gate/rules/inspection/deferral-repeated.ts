import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { type Hit, type Rule, type RuleInput, read } from '../../rule.ts';

export const deferralRepeated: Rule = {
  code: 'DEFERRAL_REPEATED',
  severity: 'caution',
  meaning: 'A finding has been deferred again more often than the regime allows',
  remedy: m.deferralRepeated_remedy,
  source: read('AMC on defects (original date kept)'),
  values: ['deferralsCarried'],
  check: (input) => [...byRecord(input), ...byEarlierPacks(input)],
};

function byRecord({ visit, regime }: RuleInput): Hit[] {
  return hitsIn(['findings'], visit.findings, ({ id, deferral }) => {
    const times = deferral?.timesCarried ?? 0;
    if (times <= regime.deferralsCarried.value) return undefined;
    return {
      field: ['deferral', 'timesCarried'],
      sentence: said(m.deferralRepeated_findingCarriedForwardTimes, { id, times }),
      data: { finding: id, times },
    };
  });
}

/** Counts by the packs, independent of the count in the record. */
function byEarlierPacks({ visit, results, regime }: RuleInput): Hit[] {
  const decided = results.open.standing.filter((open) => !results.open.untouched.includes(open));
  return hits(decided, ({ kind, id, item, timesCarried = 0 }) => {
    const times = timesCarried + 1;
    if (kind !== 'deferral' || item === undefined || times <= regime.deferralsCarried.value) return undefined;
    const index = (visit.findings ?? []).findIndex(
      (finding) => finding.id === id && finding.disposition === 'deferred',
    );
    const isReported = (visit.findings?.[index]?.deferral?.timesCarried ?? 0) > regime.deferralsCarried.value;
    if (isReported && !results.open.held.some((held) => held.item === item)) return undefined;
    return {
      path: index < 0 ? '/carried' : ['findings', index, 'deferral', 'timesCarried'],
      sentence: said(m.deferralRepeated_carriedForwardTimes, { item, times }),
      data: { item, times },
    };
  });
}
