import { describe, expect, test } from 'vitest';
import { type OpenEntry, openEntry, openLists } from '../../site/browser/shop/open-lists.ts';
import type { DueList } from '../../worker/client/client.ts';
import { formatterFor } from '../../worker/core/text/formatter.ts';
import { localeOf } from '../../worker/core/text/locale.ts';

const UNITS = { mass: 'kg', arm: 'mm', volume: 'l' } as const;
const fmt = formatterFor(UNITS);

/** An aircraft with two engines: of two meters that count engines, each is called by its own name. */
const record = {
  meters: {
    readings: [
      { id: 'hobbs', of: 'airframe', basis: 'hour-meter', inHours: 1200, outHours: 1210 },
      { id: 'left', of: 'engine', basis: 'tacho', inHours: 900, outHours: 910 },
      { id: 'right', of: 'engine', basis: 'tacho', inHours: 300, outHours: 310 },
    ],
  },
} as unknown as Parameters<typeof openLists>[1]['record'];

const NOTHING: DueList = {
  pack: 'Q-SLM-P1-1',
  issuedAt: '2026-11-05T13:20:00Z',
  withdrawn: null,
  comingDue: [],
  items: [],
  deferred: [],
  watched: [],
  limitations: [],
  flightTests: [],
  tighter: [],
};

type Item = DueList['items'][number];

/** Figures and units, days and months are joined by no-break spaces. */
const plain = (due: OpenEntry['due']): OpenEntry['due'] => JSON.parse(JSON.stringify(due).replaceAll('\u00a0', ' '));

const ITEM: Item = {
  id: 'L01',
  openItem: 'Q-SLM-P1/L01',
  kind: 'due',
  item: '100-hour inspection',
  basis: 'programme',
  of: 'airframe',
  isOverdue: false,
  isWithinTolerance: false,
};

/** What comes due, as it is printed, with plain spaces. */
function printed(item: Partial<Item>): OpenEntry['due'] {
  return plain(openLists({ ...NOTHING, comingDue: [{ ...ITEM, ...item }] }, { record, fmt })[0]?.entries[0]?.due);
}

describe('openLists()', () => {
  test('says on which meter the hours are, of two engines by its own name', () => {
    expect(printed({ dueHours: 1304.9, hoursLeft: 94.9 })).toEqual({
      limit: '1304.9 h, airframe',
      left: '94.9 h, airframe',
      state: 'not due yet',
    });
    expect(printed({ of: 'engine', meter: 'right', dueHours: 350, hoursLeft: 40 })?.left).toBe(
      '40.0 h, engine (tacho, right)',
    );
    // The meter was renamed since: the product that it counts is known all the same.
    expect(printed({ of: 'propeller', meter: 'prop', dueHours: 1500, hoursLeft: 887.3 })?.left).toBe(
      '887.3 h, propeller',
    );
  });

  test('tells two meters of one product apart by how they count', () => {
    const readings = [
      { id: 'tac', of: 'engine', basis: 'tacho', inHours: 900, outHours: 910 },
      { id: 'engfl', of: 'engine', basis: 'flight', inHours: 700, outHours: 710 },
    ];
    const on = (meter: string, locale?: Parameters<typeof formatterFor>[1]): string | undefined =>
      openLists(
        { ...NOTHING, comingDue: [{ ...ITEM, of: 'engine', meter, dueHours: 950, hoursLeft: 40 }] },
        { record: { meters: { readings } } as typeof record, fmt: formatterFor(UNITS, locale) },
      )[0]?.entries[0]?.due?.left.replaceAll('\u00a0', ' ');
    expect([on('tac'), on('engfl')]).toEqual(['40.0 h, engine (tacho)', '40.0 h, engine (flight)']);
    expect(on('tac', localeOf('de'))).toBe('40,0 h, Triebwerk (Drehzahlzähler)');
  });

  test('names every clock, and never more time than there is', () => {
    const due = printed({
      dueDate: '2027-11-05',
      daysLeft: 1,
      dueHours: 1304.99,
      hoursLeft: 0.06,
      dueLandings: 2400,
      landingsLeft: 89,
    });
    expect(due?.limit).toBe('5 Nov 2027 or 1304.9 h, airframe or 2400 landings');
    expect(due?.left).toBe('1 day; 0.0 h, airframe; 89 landings');
    // What binary numbers make of 1304.9 less 1304.9 is no hour over.
    expect(printed({ dueHours: 1304.9, hoursLeft: -2.3e-13 })?.left).toBe('0.0 h, airframe');
  });

  test('says in words what is overdue, by how much, and whether it is within its tolerance', () => {
    const late = { dueDate: '2026-11-01', daysLeft: -29, dueHours: 1200, hoursLeft: -10.04, isOverdue: true };
    expect(printed(late)).toMatchObject({
      left: 'over by 29 days; over by 10.1 h, airframe',
      state: 'overdue',
    });
    expect(printed({ ...late, isWithinTolerance: true })?.state).toBe('overdue, within its tolerance');
  });

  test('says so where the newest record does not tell how far the aircraft has flown', () => {
    expect(printed({ dueDate: '2027-11-05', daysLeft: 340, dueHours: 1304.9 })).toMatchObject({
      left: '340 days; hours not known',
      state: 'not known',
    });
    expect(printed({ dueLandings: 2400 })).toMatchObject({ left: 'landings not known', state: 'not known' });
    // It is overdue all the same on the clock that is known.
    expect(printed({ dueDate: '2026-11-01', daysLeft: -29, dueHours: 1304.9, isOverdue: true })?.state).toBe('overdue');
  });

  test('says so where there is no limit', () => {
    expect(printed({})).toEqual({ limit: 'no limit in the record', left: 'no limit', state: 'open' });
  });

  test('has every list, each thing by its name, and none that is empty', () => {
    const open = (id: string) => ({ id, openItem: `Q-SLM-P1/${id}` });
    const lists = openLists(
      {
        ...NOTHING,
        comingDue: [
          {
            ...open('D2-SB-016'),
            kind: 'bulletin',
            item: 'D2-SB-016, Nose leg fork, cracks',
            basis: 'bulletin',
            of: 'airframe',
            isOverdue: false,
            isWithinTolerance: false,
          },
          {
            ...open('F4'),
            kind: 'deferral',
            item: 'Nose leg: worn',
            dueDate: '2027-01-31',
            of: 'airframe',
            daysLeft: 62,
            isOverdue: false,
            isWithinTolerance: false,
          },
          {
            ...open('F7'),
            kind: 'watch',
            item: 'Tail skid: worn',
            dueLandings: 2400,
            landingsLeft: 89,
            of: 'airframe',
            isOverdue: false,
            isWithinTolerance: false,
          },
        ],
        watched: [
          { ...open('F6'), text: 'Exhaust: soot' },
          { ...open('F7'), text: 'Tail skid: worn' },
        ],
        limitations: [{ openItem: 'Q-SLM-P1/limitation-1', text: 'No aerobatics' }],
        flightTests: [{ ...open('M1'), text: 'Radio replaced' }],
      },
      { record, fmt },
    );
    const lines = lists.map(({ title, entries }) => [title, ...entries.map(({ item, what }) => `${item}: ${what}`)]);
    expect(lines).toEqual([
      [
        'Comes due',
        'Q-SLM-P1/D2-SB-016: D2-SB-016, Nose leg fork, cracks',
        'Q-SLM-P1/F4: F4 Nose leg: worn',
        'Q-SLM-P1/F7: F7 Tail skid: worn',
      ],
      ['To be watched', 'Q-SLM-P1/F6: F6 Exhaust: soot'],
      ['Limitations in force', 'Q-SLM-P1/limitation-1: No aerobatics'],
      ['Flight tests outstanding', 'Q-SLM-P1/M1: M1 Radio replaced'],
    ]);
    expect(lists[0]?.entries.map(({ kind }) => kind)).toEqual(['bulletin', 'deferred', 'look again']);
    expect(plain(openEntry(lists, 'Q-SLM-P1/F4')?.entry.due)).toEqual({
      limit: '31 Jan 2027',
      left: '62 days',
      state: 'not due yet',
    });
    expect(openEntry(lists, 'Q-SLM-P1/F5')).toBeUndefined();
    expect(openLists(NOTHING, { record, fmt })).toEqual([]);
  });
});
