import { isAtLeast } from '../../calc/limit-met.ts';
import { sameMeter } from '../../calc/open-items/readings.ts';
import { totalHours } from '../../calc/total-hours.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule, type RuleInput } from '../rule.ts';

export const metersRunBack: Rule = {
  code: 'METERS_RUN_BACK',
  severity: 'blocks',
  meaning:
    'A meter reads less at release than at arrival, or its total or the landings are fewer than at an earlier visit',
  remedy: phrase`Correct the reading; where a meter was replaced, give what the one before had counted as its offset; where the earlier visit is wrong, correct that first`,
  source: PRACTICE,
  check: (input) => [...withinVisit(input), ...sinceEarlier(input)],
};

function withinVisit({ visit, say }: RuleInput): Hit[] {
  return (visit.meters?.readings ?? []).flatMap(({ id, inHours, outHours }, index): Hit[] => {
    if (isAtLeast(outHours, inHours)) return [];
    const [inText, outText] = say.plainApart(inHours, outHours, 1);
    return [
      {
        path: ['meters', 'readings', index, 'outHours'],
        sentence: say.words`Meter ${id} read ${inText} h at arrival and ${outText} h at release`,
        data: { inHours, outHours },
      },
    ];
  });
}

/** What a withdrawn pack read may be what was wrong with it, and binds nobody. */
function sinceEarlier({ visit, facts, say }: RuleInput): Hit[] {
  const { readings } = facts;
  if (!readings) return [];
  const hits = (visit.meters?.readings ?? []).flatMap((meter, index): Hit[] => {
    const before = sameMeter(readings, meter);
    const hours = totalHours(meter);
    if (!before || before.isWithdrawn || isAtLeast(hours, before.hours)) return [];
    const [beforeText, hoursText] = say.plainApart(before.hours, hours, 1);
    return [
      {
        path: ['meters', 'readings', index, 'outHours'],
        sentence: say.words`Meter ${meter.id} has ${hoursText} h in total; ${before.pack ?? ''} had ${beforeText} h`,
        data: { beforeHours: before.hours, hours },
      },
    ];
  });
  const { landings: before } = readings;
  const count = visit.meters?.landings;
  if (before && !before.isWithdrawn && count !== undefined && count < before.count)
    hits.push({
      path: ['meters', 'landings'],
      sentence: say.words`The record has ${say.plain(count, 0)} landings; ${before.pack ?? ''} had ${say.plain(before.count, 0)}`,
      data: { before: before.count, landings: count },
    });
  return hits;
}
