import { changeSinceWeighing } from '../../../calc/mass/history.ts';
import { cgMm, hasMass, type MassMoment, minus } from '../../../calc/mass/mass-moment.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { addMonths, dateOf } from '../../../units/calendar.ts';
import { type Hit, PRACTICE, type Rule, type RuleInput } from '../../rule.ts';

export const reweighDue: Rule = {
  code: 'REWEIGH_DUE',
  severity: 'caution',
  meaning: 'The last weighing is too old, or too much has changed since',
  remedy: m.reweighDue_remedy,
  source: PRACTICE,
  values: ['reweighYears', 'reweighChangeShare', 'reweighMacPercent'],
  check: (input) => {
    const { visit, results, regime, at } = input;
    const { schedule, prediction } = results;
    if (visit.weighing || !schedule || !prediction) return undefined;
    const hits: Hit[] = [];
    const years = regime.reweighYears.value;
    if (years !== null && schedule.weighedOn && addMonths(schedule.weighedOn, 12 * years) < dateOf(at)) {
      hits.push({
        path: ['baseline', 'weighedOn'],
        sentence: said(m.reweighDue_lastWeighedMoreThan, { weighedOn: figure.date(schedule.weighedOn), years }),
        data: { weighedOn: schedule.weighedOn, years },
      });
    }
    const change = netChange(input, schedule);
    return [...hits, ...massHit(input, schedule, change), ...centreHit(input, schedule, change)];
  },
};

type Schedule = NonNullable<RuleInput['results']['schedule']>;

/** A change to another configuration is known by its kit: it does not count as creep. */
function netChange({ visit }: RuleInput, { history, weighedOn }: Schedule): MassMoment {
  const converting = new Set(
    (visit.modifications ?? []).filter(({ convertsTo }) => convertsTo !== undefined).map(({ id }) => id),
  );
  return changeSinceWeighing(
    history,
    weighedOn,
    ({ cause }) => cause.kind !== 'modification' || !converting.has(cause.modification),
  );
}

function massHit({ regime }: RuleInput, { massKg }: Schedule, change: MassMoment): Hit[] {
  const { value: share, source } = regime.reweighChangeShare;
  const weighedKg = massKg - change.massKg;
  if (share === null || isAtMost(Math.abs(change.massKg), share * weighedKg)) return [];
  const [moved, limit] = figure.apart('mass', change.massKg, share * weighedKg, { signed: true });
  return [
    {
      path: ['modifications'],
      sentence: said(m.reweighDue_netChange, {
        moved,
        limit,
        share: figure.plain(share * 100, 1),
        source: termOf(source.text),
      }),
      data: { movedKg: change.massKg, limitKg: share * weighedKg, share },
    },
  ];
}

function centreHit({ visit, regime }: RuleInput, schedule: Schedule, change: MassMoment): Hit[] {
  const { value: percent, source } = regime.reweighMacPercent;
  const { mac } = visit.aircraft;
  const weighed = minus(schedule, change);
  if (percent === null || !mac || !hasMass(weighed)) return [];
  const shiftMm = schedule.armMm - cgMm(weighed);
  const limitMm = (percent / 100) * mac.lengthMm;
  if (isAtMost(Math.abs(shiftMm), limitMm)) return [];
  const [shift, limit] = figure.apart('arm', shiftMm, limitMm, { signed: true });
  return [
    {
      path: ['modifications'],
      sentence: said(m.reweighDue_netShift, {
        shift,
        limit,
        percent: figure.asIs(percent),
        source: termOf(source.text),
      }),
      data: { shiftMm, limitMm, percent },
    },
  ];
}
