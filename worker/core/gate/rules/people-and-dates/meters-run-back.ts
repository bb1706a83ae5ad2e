import { totalCount } from '../../../calc/lives/counting.ts';
import { totalHours } from '../../../calc/lives/total-hours.ts';
import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import { sameCounter, sameMeter } from '../../../calc/open-items/readings.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { type EntryHit, hitsIn } from '../../hits.ts';
import { type Hit, PRACTICE, type Rule, type RuleInput } from '../../rule.ts';
import { saidClock } from '../../said-clock.ts';

export const metersRunBack: Rule = {
  code: 'METERS_RUN_BACK',
  severity: 'blocks',
  meaning: 'A meter reads less than at arrival, or its total or a count fell since an earlier visit',
  remedy: m.metersRunBack_remedy,
  source: PRACTICE,
  check: (input) => [...withinVisit(input), ...sinceEarlier(input), ...counters(input)],
};

function withinVisit({ visit }: RuleInput): Hit[] {
  const hits = hitsIn(['meters', 'readings'], visit.meters?.readings, ({ id, inHours, outHours }) => {
    if (isAtLeast(outHours, inHours)) return undefined;
    const [inText, outText] = figure.plainApart(inHours, outHours, 1);
    return {
      field: 'outHours',
      sentence: said(m.metersRunBack_meterReadHArrival, { id, in: inText, out: outText }),
      data: { inHours, outHours },
    };
  });
  const { landings, landingsIn } = visit.meters ?? {};
  if (landings !== undefined && landingsIn !== undefined && landings < landingsIn)
    hits.push({
      path: ['meters', 'landings'],
      sentence: said(m.metersRunBack_landingsFell, {
        landings: figure.plain(landings, 0),
        before: figure.plain(landingsIn, 0),
      }),
      data: { before: landingsIn, landings },
    });
  return hits;
}

/** Readings of a withdrawn pack are ignored: they may be the reason for the withdrawal. */
function sinceEarlier({ visit, facts }: RuleInput): Hit[] {
  const { readings } = facts;
  if (!readings) return [];
  const hits = hitsIn(['meters', 'readings'], visit.meters?.readings, (meter) => {
    const before = sameMeter(readings, meter);
    const hours = totalHours(meter);
    if (!before || before.isWithdrawn || isAtLeast(hours, before.hours)) return undefined;
    const [beforeText, hoursText] = figure.plainApart(before.hours, hours, 1);
    return {
      field: 'outHours',
      sentence: said(m.metersRunBack_meterHTotalH, {
        meter: meter.id,
        hours: hoursText,
        pack: before.pack ?? '',
        before: beforeText,
      }),
      data: { beforeHours: before.hours, hours },
    };
  });
  const { landings: before } = readings;
  const count = visit.meters?.landings;
  if (before && !before.isWithdrawn && count !== undefined && count < before.count)
    hits.push({
      path: ['meters', 'landings'],
      sentence: said(m.metersRunBack_recordLandings, {
        count: figure.plain(count, 0),
        pack: before.pack ?? '',
        count2: figure.plain(before.count, 0),
      }),
      data: { before: before.count, landings: count },
    });
  return hits;
}

/** Counters with less than at arrival, or less in total than an earlier visit had. */
function counters({ visit, facts }: RuleInput): Hit[] {
  return hitsIn(['meters', 'counters'], visit.meters?.counters, (counter) => {
    const { id, counts, in: arrival, out } = counter;
    const before = facts.readings && sameCounter(facts.readings, counter);
    const total = totalCount(counter);
    const hit = (sentence: Said, then: number, now: number): EntryHit => ({
      field: 'out',
      sentence,
      data: { counter: id, before: then, now },
    });
    if (out < arrival) {
      const values = { id, in: saidClock(counts, arrival), out: saidClock(counts, out) };
      return hit(said(m.metersRunBack_counterArrival, values), arrival, out);
    }
    if (!before || before.isWithdrawn || total >= before.count) return undefined;
    const values = {
      id,
      now: saidClock(counts, total),
      pack: before.pack ?? '',
      before: saidClock(counts, before.count),
    };
    return hit(said(m.metersRunBack_counterTotal, values), before.count, total);
  });
}
