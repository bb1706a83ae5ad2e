import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { carryOver, openAfter } from '../../../../worker/core/calc/open-items/carry-over.ts';
import type { OpenItem } from '../../../../worker/core/calc/open-items/open-item.ts';
import { CARRIED_ANSWERS } from '../../../../worker/core/record/carried.ts';
import type { Visit } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const FULL = readVisit('nose-wheel-full');
const AT = '2026-11-05T14:20:00+01:00';

type Carried = NonNullable<Visit['carried']>[number];

/** The demo visit without anything that it would leave open itself. */
const NOTHING_OPEN: Visit = {
  ...FULL,
  findings: [],
  lives: undefined,
  bulletins: undefined,
  modifications: [],
  release: undefined,
} as unknown as Visit;

const F4 = (FULL.findings ?? []).find(({ id }) => id === 'F4');
if (!F4) throw new Error('The demo visit must have the deferral F4');

const item = (id: string, more: Partial<OpenItem> = {}): OpenItem => ({
  item: `Q-SLM-P1/${id}`,
  id,
  kind: 'deferral',
  text: `something at ${id}`,
  until: { date: '2027-01-31' },
  of: 'airframe',
  ...more,
});

const answered = (of: OpenItem, answer: Carried['answer'], evidence?: string): Carried => ({
  item: of.item ?? '',
  answer,
  by: 'jonas',
  at: AT,
  reason: 'a reason',
  evidence,
});

const names = (items: readonly OpenItem[]): (string | undefined)[] => items.map((open) => open.item);

describe('openAfter()', () => {
  test('names everything that a first visit leaves open by its pack', () => {
    const open = openAfter([], FULL, { pack: 'Q-SLM-P1', at: AT });
    expect(names(open)).toEqual(
      expect.arrayContaining([
        'Q-SLM-P1/F4',
        'Q-SLM-P1/F6',
        'Q-SLM-P1/L01',
        'Q-SLM-P1/D2-SB-016',
        'Q-SLM-P1/limitation-1',
      ]),
    );
    // Rectified and declined findings stand open nowhere; bulletins that were complied with do not either.
    for (const closed of ['F1', 'F5', 'D2-SB-014']) expect(names(open)).not.toContain(`Q-SLM-P1/${closed}`);
    expect(open.find(({ id }) => id === 'F4')?.until).toEqual({ date: '2027-01-31', hours: 1230 });
  });

  test('tells two items of one identifier apart by their kind', () => {
    const twice = { ...FULL, modifications: [{ ...FULL.modifications?.[0], id: 'F4', flightTest: 'owed' }] };
    const open = openAfter([], twice as Visit, { pack: 'Q-SLM-P1', at: AT });
    expect(names(open)).toEqual(expect.arrayContaining(['Q-SLM-P1/F4', 'Q-SLM-P1/F4.test']));
  });

  test('lets a visit that says nothing close nothing', () => {
    const before = openAfter([], FULL, { pack: 'Q-SLM-P1', at: AT });
    const after = openAfter(before, NOTHING_OPEN, { pack: 'Q-SLM-P2', at: AT });
    expect(after).toEqual(before.map((open) => ({ ...open, timesCarried: 1 })));
    expect(openAfter(after, NOTHING_OPEN, { pack: 'Q-SLM-P3', at: AT })[0]?.timesCarried).toBe(2);
  });

  describe('after a correction', () => {
    const LATER = '2026-11-08T10:00:00+01:00';
    const saying = (...limitations: string[]): Visit =>
      ({ ...NOTHING_OPEN, release: { ...FULL.release, limitations } }) as Visit;
    const first = { visit: saying('Day flight only'), at: AT };
    const corrected = saying('No spins: rudder cable worn', 'Day flight only');
    const open = openAfter([], corrected, { pack: 'Q-SLM-P1', at: LATER, earlier: [first] });

    test('keeps the names of what stood in the issue before, and names what is new after the new issue', () => {
      expect(open.map(({ item: name, text, since }) => [name, text, since])).toEqual([
        ['Q-SLM-P1-2/limitation-1', 'No spins: rudder cable worn', LATER],
        ['Q-SLM-P1/limitation-1', 'Day flight only', AT],
      ]);
      const third = { pack: 'Q-SLM-P1', at: LATER, earlier: [first, { visit: corrected, at: LATER }] };
      expect(names(openAfter([], saying('No spins: rudder cable worn', 'No night'), third))).toEqual([
        'Q-SLM-P1-2/limitation-1',
        'Q-SLM-P1-3/limitation-2',
      ]);
    });

    test('takes no answer of before for what only the correction brought', () => {
      const [spins, day] = open;
      if (!spins || !day) throw new Error('Two limitations must stand open');
      const answers = [answered(day, 'closed', 'M1'), answered(spins, 'closed', 'M1')];
      const between = { ...NOTHING_OPEN, carried: answers } as Visit;
      const at = '2026-11-06T10:00:00+01:00';
      expect(names(openAfter(open, between, { pack: 'Q-SLM-P2', at }))).toEqual(['Q-SLM-P1-2/limitation-1']);
      expect(openAfter(open, between, { pack: 'Q-SLM-P2', at: '2026-11-09T10:00:00+01:00' })).toEqual([]);
    });
  });

  test('keeps the first name of what a later record repeats, with what that says of it', () => {
    const before = openAfter([], FULL, { pack: 'Q-SLM-P1', at: AT });
    const earlier = { ...F4, deferral: { ...F4.deferral, untilDate: '2026-12-31' } };
    const later = { ...NOTHING_OPEN, findings: [earlier] } as Visit;
    const after = openAfter(before, later, { pack: 'Q-SLM-P2', at: AT });
    expect(names(after)).toEqual(names(before));
    expect(after.find(({ id }) => id === 'F4')?.until.date).toBe('2026-12-31');
  });

  test('lets a withdrawn release close and extend nothing, and keeps what it found open', () => {
    const before = [item('F9')];
    const visit = { ...NOTHING_OPEN, findings: [F4], carried: [answered(item('F9'), 'closed', 'M1')] } as Visit;
    const at = { pack: 'Q-SLM-P2', at: AT };
    expect(names(openAfter(before, visit, at))).toEqual(['Q-SLM-P2/F4']);
    expect(names(openAfter(before, visit, { ...at, isWithdrawn: true }))).toEqual(['Q-SLM-P1/F9', 'Q-SLM-P2/F4']);
  });

  test('keeps the earlier limit that a withdrawn release set', () => {
    const before = openAfter([], { ...NOTHING_OPEN, findings: [F4] } as Visit, { pack: 'Q-SLM-P1', at: AT });
    const sooner = { ...F4, deferral: { ...F4.deferral, untilDate: '2026-11-20', untilHours: 1240 } };
    const visit = { ...NOTHING_OPEN, findings: [sooner] } as Visit;
    const after = openAfter(before, visit, { pack: 'Q-SLM-P2', at: AT, isWithdrawn: true });
    expect(after[0]?.until).toEqual({ date: '2026-11-20', hours: 1230 });
  });
});

describe('carryOver()', () => {
  const withAnswers = (carried: Carried[], findings: unknown[] = []): Visit =>
    ({ ...NOTHING_OPEN, carried, findings }) as Visit;

  test('closes, repeats, extends and supersedes as it is told', () => {
    const before = [item('F1'), item('F2'), item('F3'), item('F4x')];
    const extended = { ...F4, id: 'F7', deferral: { ...F4.deferral, untilDate: '2028-01-31' } };
    const instead = { ...F4, id: 'F8', text: 'another damper' };
    const carried = [
      answered(item('F1'), 'closed', 'M1'),
      answered(item('F2'), 'repeated'),
      answered(item('F3'), 'extended', 'F7'),
      answered(item('F4x'), 'superseded', 'F8'),
    ];
    const { standing, unanswered } = carryOver(before, withAnswers(carried, [extended, instead]), AT);
    expect(unanswered).toEqual([]);
    expect(standing.map(({ item: name, id, until }) => [name, id, until.date])).toEqual([
      ['Q-SLM-P1/F2', 'F2', '2027-01-31'],
      ['Q-SLM-P1/F3', 'F7', '2028-01-31'],
      [undefined, 'F8', '2027-01-31'],
    ]);
  });

  test('knows what is repeated in words and as an entry for one thing, and holds what has no entry', () => {
    const before = openAfter([], { ...NOTHING_OPEN, findings: [F4] } as Visit, { pack: 'Q-SLM-P1', at: AT });
    const carried = before.map((open) => answered(open, 'repeated'));
    const both = carryOver(before, withAnswers(carried, [F4]), AT);
    expect(names(both.standing)).toEqual(['Q-SLM-P1/F4']);
    expect(both.held).toEqual([]);
    const inWords = carryOver(before, withAnswers(carried), AT);
    expect([names(inWords.standing), names(inWords.held)]).toEqual([['Q-SLM-P1/F4'], ['Q-SLM-P1/F4']]);
    // To say that it stands as it stood, and to give it more time, is to put it off.
    const later = { ...F4, deferral: { ...F4.deferral, untilDate: '2027-02-28' } };
    expect(carryOver(before, withAnswers(carried, [later]), AT).putOff).toHaveLength(1);
  });

  test.each([
    ['a later date', { untilDate: '2027-02-01' }, true],
    ['more hours', { untilHours: 1230.1 }, true],
    ['no date any more', { untilDate: undefined }, true],
    ['the same', {}, false],
    ['an earlier date', { untilDate: '2027-01-30' }, false],
  ])('finds that a deferral was put off: %s', (_, change, isPutOff) => {
    const before = openAfter([], { ...NOTHING_OPEN, findings: [F4] } as Visit, { pack: 'Q-SLM-P1', at: AT });
    const now = { ...F4, deferral: { ...F4.deferral, ...change } };
    const { putOff, standing } = carryOver(before, withAnswers([], [now]), AT);
    expect(putOff.map(({ item: open }) => open.item)).toEqual(isPutOff ? ['Q-SLM-P1/F4'] : []);
    // Until somebody answers for it, the limit is the one that it had.
    if (isPutOff) expect(standing[0]?.until).toEqual({ date: '2027-01-31', hours: 1230 });
  });

  test('leaves open what a record that names the standing file does not answer, and does not count it as carried', () => {
    const oil = {
      ...NOTHING_OPEN,
      lives: {
        items: [{ id: 'L02', item: 'Oil', basis: 'programme', interval: { hours: 50 }, lastDone: { hours: 1200 } }],
      },
    } as Visit;
    const before = openAfter([], oil, { pack: 'Q-SLM-P1', at: AT });
    const small = { ...NOTHING_OPEN, standing: { pack: 'Q-SLM-P1-1', sha256: '0'.repeat(64) } } as Visit;
    expect(carryOver(before, NOTHING_OPEN as Visit, AT)).toMatchObject({ unanswered: before, untouched: [] });
    expect(carryOver(before, small, AT)).toMatchObject({ unanswered: [], untouched: before, standing: before });
    expect(openAfter(before, small, { pack: 'Q-SLM-P2', at: AT })).toEqual(before);
    expect(openAfter(before, oil, { pack: 'Q-SLM-P2', at: AT })).toMatchObject([{ timesCarried: 1 }]);
  });

  test('takes the next interval of what was done for no putting off', () => {
    const oil = (hours: number) =>
      ({
        ...NOTHING_OPEN,
        lives: {
          items: [{ id: 'L02', item: 'Oil', basis: 'programme', interval: { hours: 50 }, lastDone: { hours } }],
        },
      }) as Visit;
    const before = openAfter([], oil(1200), { pack: 'Q-SLM-P1', at: AT });
    expect(carryOver(before, oil(1250), AT)).toMatchObject({
      putOff: [],
      unanswered: [],
      standing: [{ until: { hours: 1300 } }],
    });
    const longer = oil(1200);
    Object.assign(longer.lives?.items[0]?.interval ?? {}, { hours: 80 });
    expect(carryOver(before, longer, AT).putOff).toHaveLength(1);
  });

  describe('of a directive', () => {
    const directive = (life: object, meters: object[] = []): Visit =>
      ({
        ...NOTHING_OPEN,
        meters: { readings: [...(FULL.meters?.readings ?? []), ...meters] },
        lives: { items: [{ id: 'L12', item: 'Fork', basis: 'directive', lastDone: {}, ...life }] },
      }) as unknown as Visit;
    const asBefore = { interval: { hours: 100, months: 12 }, lastDone: { hours: 1200, date: '2026-05-01' } };
    const before = openAfter([], directive(asBefore), { pack: 'Q-SLM-P1', at: AT });

    test('takes a clock that is added, or another meter, for putting off', () => {
      const hobbs = { id: 'hobbs', of: 'airframe', basis: 'hour-meter', inHours: 400, outHours: 400 };
      const onOther = directive({ ...asBefore, meter: 'hobbs' }, [hobbs]);
      expect(carryOver(before, onOther, AT).putOff).toHaveLength(1);
      const byDate = openAfter([], directive({ interval: { months: 12 }, lastDone: { date: '2026-05-01' } }), {
        pack: 'Q-SLM-P1',
        at: AT,
      });
      const withHours = { interval: { months: 72 }, lastDone: { date: '2026-05-01', hours: 1200 } };
      expect(carryOver(byDate, directive(withHours), AT).putOff).toHaveLength(1);
      const done = { ...asBefore, lastDone: { hours: 1204.9, date: '2026-11-05' } };
      expect(carryOver(before, directive(done), AT).putOff).toEqual([]);
    });

    test.each([
      ['extended', 'a finding that is watched', { id: 'F9', disposition: 'monitor', deferral: undefined }],
      ['extended', 'a deferral', { id: 'F9' }],
      ['superseded', 'a finding that is watched', { id: 'F9', disposition: 'monitor', deferral: undefined }],
      ['superseded', 'a deferral', { id: 'F9' }],
    ] as const)('is not %s by %s', (answer, _, finding) => {
      const carried = before.map((open) => answered(open, answer, 'F9'));
      const { unfit, withoutEntry, held } = carryOver(before, withAnswers(carried, [{ ...F4, ...finding }]), AT);
      expect([unfit, withoutEntry, names(held)]).toEqual([[0], [], ['Q-SLM-P1/L12']]);
    });

    test.each([
      ['a recommendation', { basis: 'recommendation', interval: { hours: 1000, months: 120 } }, false],
      ['a programme', { basis: 'programme', interval: { hours: 200, months: 24 } }, false],
      ['one clock alone', { interval: { months: 24 } }, false],
      ['a longer interval', { interval: { hours: 200, months: 24 } }, true],
    ])('is extended by %s only as far as that binds as much', (_, life, isTaken) => {
      const carried = before.map((open) => answered(open, 'extended', 'L13'));
      const now = { ...directive({ ...asBefore, ...life, id: 'L13' }), carried };
      const { unfit, bindingExtended } = carryOver(before, now, AT);
      expect([unfit, bindingExtended]).toEqual(isTaken ? [[], [0]] : [[0], []]);
    });

    test('is not closed while the record leaves it as it was, and cannot take its own place', () => {
      const as = (answer: 'closed' | 'superseded', life: object) => ({
        ...directive(life),
        carried: before.map((open) => answered(open, answer, 'L12')),
      });
      const longer = { ...asBefore, interval: { hours: 900, months: 90 } };
      const closed = carryOver(before, as('closed', longer), AT);
      expect([closed.contradicted, closed.standing]).toEqual([[0], before]);
      expect(carryOver(before, as('superseded', longer), AT)).toMatchObject({ unfit: [0], held: before });
      const done = { ...asBefore, lastDone: { hours: 1204.9, date: '2026-11-05' } };
      expect(carryOver(before, as('closed', done), AT).contradicted).toEqual([]);
    });
  });

  test('says of answers that they name nothing, or nothing that stands open', () => {
    const before = [item('F1'), item('F2')];
    const carried = [
      answered(item('F1'), 'extended', 'M1'),
      answered(item('F1'), 'closed', 'M1'),
      answered(item('F9'), 'closed', 'M1'),
    ];
    const { withoutEntry, unmatched, standing, unanswered } = carryOver(before, withAnswers(carried), AT);
    expect([withoutEntry, unmatched]).toEqual([[0], [1, 2]]);
    expect(names(standing)).toEqual(['Q-SLM-P1/F1', 'Q-SLM-P1/F2']);
    expect(names(unanswered)).toEqual(['Q-SLM-P1/F2']);
  });

  test('never loses an item without an answer that says so', () => {
    const items = fc
      .uniqueArray(fc.integer({ min: 1, max: 12 }), { maxLength: 12 })
      .map((ids) => ids.map((id) => item(`F${id}`)));
    const answers = fc.array(
      fc.record({
        id: fc.integer({ min: 1, max: 14 }),
        answer: fc.constantFrom(...CARRIED_ANSWERS),
        to: fc.integer({ min: 1, max: 14 }),
      }),
      { maxLength: 14 },
    );
    const kept = fc.uniqueArray(fc.integer({ min: 1, max: 14 }), { maxLength: 6 });
    fc.assert(
      fc.property(items, answers, kept, (before, given, ids) => {
        const carried = given.map(({ id, answer, to }) => answered(item(`F${id}`), answer, `F${to}`));
        const findings = ids.map((id) => ({ ...F4, id: `F${id}`, place: 'something', text: `at F${id}` }));
        const { standing } = carryOver(before, withAnswers(carried, findings), AT);
        for (const open of before) {
          const first = carried.find((answer) => answer.item === open.item)?.answer;
          if (first === 'closed') continue;
          const isThere = standing.some((after) => after.item === open.item);
          const isReplaced =
            first === 'superseded' && ids.some((id) => carried.some(({ evidence }) => evidence === `F${id}`));
          expect(isThere || isReplaced).toBe(true);
        }
        expect(new Set(names(standing).filter(Boolean)).size).toBe(names(standing).filter(Boolean).length);
      }),
      RUNS,
    );
  });
});
