import { describe, expect, test } from 'vitest';
import { dueByRecord } from '../../site/browser/inspection/due-by-record.ts';
import type { DueList } from '../../worker/client/client.ts';

const AT = '2026-11-30T08:00:00Z';

const shimmy = {
  id: 'F4',
  openItem: 'Q-SLM-P1/F4',
  text: 'Damper',
  untilDate: '2027-01-31',
  untilHours: 1230,
  of: 'airframe',
};
const oil = {
  id: 'L02',
  kind: 'due' as const,
  openItem: 'Q-SLM-P1/L02',
  item: 'Oil',
  basis: 'programme' as const,
  of: 'engine',
};

/** As the service counts it by a pack that read 1204.9 h. */
const due: DueList = {
  pack: 'Q-SLM-P1-1',
  issuedAt: '2026-11-05T13:20:00Z',
  withdrawn: null,
  comingDue: [
    { ...oil, dueHours: 1254.6, hoursLeft: 50, isOverdue: false, isWithinTolerance: false },
    {
      ...{ id: 'F4', openItem: 'Q-SLM-P1/F4', kind: 'deferral', item: 'Damper', of: 'airframe' },
      ...{ dueDate: '2027-01-31', dueHours: 1230, isOverdue: false, isWithinTolerance: false },
    },
  ],
  items: [{ ...oil, dueHours: 1254.6, hoursLeft: 50, isOverdue: false, isWithinTolerance: false }],
  deferred: [{ ...shimmy, daysLeft: 62, hoursLeft: 25.1, isOverdue: false }],
  watched: [],
  limitations: [],
  flightTests: [],
  tighter: [],
};

const reading = (of: 'airframe' | 'engine', outHours: number, more = {}) => {
  return { id: of, of, basis: 'hour-meter' as const, inHours: outHours, outHours, ...more };
};

describe('dueByRecord()', () => {
  test('counts the hours left by the meters of the record on the page', () => {
    const [damper] = dueByRecord(due, { meters: { readings: [reading('airframe', 1400)] } }, AT).deferred;
    expect(damper).toMatchObject({ daysLeft: 62, hoursLeft: -170, isOverdue: true });
  });

  test('adds what an earlier meter had counted', () => {
    const readings = [reading('airframe', 10, { offsetHours: 1210 })];
    expect(dueByRecord(due, { meters: { readings } }, AT).deferred[0]?.hoursLeft).toBe(10);
  });

  test('knows nothing by a meter that the record does not read', () => {
    const { items } = dueByRecord(due, { meters: { readings: [reading('airframe', 1400)] } }, AT);
    expect(items[0]).toMatchObject({ hoursLeft: undefined, isOverdue: false });
  });

  test('never gives more than the service counts: an earlier visit that is corrected reads less than was flown', () => {
    const deferred = due.deferred.map((item) => ({ ...item, hoursLeft: -82, isOverdue: true }));
    const [damper] = dueByRecord(
      { ...due, deferred },
      { meters: { readings: [reading('airframe', 1204.9)] } },
      AT,
    ).deferred;
    expect(damper).toMatchObject({ hoursLeft: -82, isOverdue: true });
  });

  test('says nothing of a tolerance for hours that the service has not counted', () => {
    const late = due.items.map((item) => ({ ...item, hoursLeft: -2, isOverdue: true, isWithinTolerance: true }));
    const at = (hours: number) =>
      dueByRecord({ ...due, items: late }, { meters: { readings: [reading('engine', hours)] } }, AT).items[0];
    expect(at(1256.6)?.isWithinTolerance).toBe(true);
    expect(at(1280)).toMatchObject({ isOverdue: true, isWithinTolerance: false });
  });
});
