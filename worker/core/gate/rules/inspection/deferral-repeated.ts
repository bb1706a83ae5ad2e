import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, type RuleInput, read } from '../../rule.ts';

export const deferralRepeated: Rule = {
  code: 'DEFERRAL_REPEATED',
  severity: 'caution',
  meaning: 'A finding has been carried forward more than once or twice',
  remedy: m.deferralRepeated_remedy,
  source: read('AMC on defects (original date kept)'),
  check: (input) => [...byRecord(input), ...byEarlierPacks(input)],
};

function byRecord({ visit, regime }: RuleInput): Hit[] {
  return (visit.findings ?? []).flatMap(({ id, deferral }, index): Hit[] => {
    const times = deferral?.timesCarried ?? 0;
    if (times <= regime.deferralsCarried.value) return [];
    return [
      {
        path: ['findings', index, 'deferral', 'timesCarried'],
        sentence: said(m.deferralRepeated_findingCarriedForwardTimes, { id, times }),
        data: { finding: id, times },
      },
    ];
  });
}

/** What the packs themselves tell, whatever the record counts. */
function byEarlierPacks({ visit, results, regime }: RuleInput): Hit[] {
  return results.open.standing.flatMap(({ kind, id, item, timesCarried = 0 }): Hit[] => {
    const times = timesCarried + 1;
    if (kind !== 'deferral' || item === undefined || times <= regime.deferralsCarried.value) return [];
    const index = (visit.findings ?? []).findIndex(
      (finding) => finding.id === id && finding.disposition === 'deferred',
    );
    const isTold = (visit.findings?.[index]?.deferral?.timesCarried ?? 0) > regime.deferralsCarried.value;
    if (isTold && !results.open.held.some((held) => held.item === item)) return [];
    return [
      {
        path: index < 0 ? '/carried' : ['findings', index, 'deferral', 'timesCarried'],
        sentence: said(m.deferralRepeated_carriedForwardTimes, { item, times }),
        data: { item, times },
      },
    ];
  });
}
