import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { carryOver, openAfter } from '../../../worker/calc/open-items/carry-over.ts';
import type { OpenItem } from '../../../worker/calc/open-items/open-item.ts';
import { CARRIED_ANSWERS } from '../../../worker/visit/carried.ts';
import type { Visit } from '../../../worker/visit/visit.ts';
import { RUNS } from '../../property-runs.ts';
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
    expect(openAfter(before, NOTHING_OPEN, { pack: 'Q-SLM-P2', at: AT })).toEqual(before);
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
