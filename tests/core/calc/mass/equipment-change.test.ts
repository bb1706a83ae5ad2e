import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equipmentChange } from '../../../../worker/core/calc/mass/equipment-change.ts';
import { atArm, type MassMoment, total } from '../../../../worker/core/calc/mass/mass-moment.ts';
import type { AsFoundLine, Change, EquipmentItem, Modification, Visit } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const VISIT = readVisit('computed-only');
const [TEMPLATE] = VISIT.modifications ?? [];

function visitWith(equipment: EquipmentItem[], asFound: AsFoundLine[], changes: Change[]): Visit {
  if (!TEMPLATE || !VISIT.baseline) throw new Error('the computed-only visit has a modification and a baseline');
  const modification: Modification = { ...TEMPLATE, changes };
  return { ...VISIT, baseline: { ...VISIT.baseline, equipment }, asFound, modifications: [modification] };
}

const weigh = (items: readonly EquipmentItem[]): MassMoment =>
  total(items.map(({ massKg, armMm }) => atArm(massKg, armMm)));

const item = (id: string, massKg: number, armMm: number): EquipmentItem => ({ id, name: `Item ${id}`, massKg, armMm });
const masses = fc.integer({ min: 0, max: 30_000 }).map((grams) => grams / 1000);
const arms = fc.integer({ min: -1000, max: 6000 });

/** A list of ten, corrections of its first items and changes to the others, in which every item is named at most once. */
const visits = fc
  .record({
    list: fc.array(fc.tuple(masses, arms), { minLength: 10, maxLength: 10 }),
    corrections: fc.array(
      fc.tuple(fc.constantFrom('missing', 'different-mass', 'different-serial', 'unlisted'), masses, arms),
      { maxLength: 4 },
    ),
    changes: fc.array(fc.tuple(fc.constantFrom('removed', 'installed', 'relocated', 'replaced'), masses, arms), {
      maxLength: 6,
    }),
  })
  .map(({ list, corrections, changes }) =>
    visitWith(
      list.map(([massKg, armMm], index) => item(`E${index}`, massKg, armMm)),
      corrections.map(([kind, massKg, armMm], index) => correctionOf(kind, `E${index}`, massKg, armMm)),
      changes.map(([kind, massKg, armMm], index) => changeOf(kind, `E${index + 4}`, massKg, armMm)),
    ),
  );

function correctionOf(kind: AsFoundLine['kind'], id: string, massKg: number, armMm: number): AsFoundLine {
  if (kind === 'unlisted') return { kind, ...item(`U-${id}`, massKg, armMm) };
  if (kind === 'different-mass') return { kind, item: id, massKg, armMm };
  return kind === 'missing' ? { kind, item: id } : { kind, item: id, serial: '7' };
}

function changeOf(
  kind: 'installed' | 'relocated' | 'removed' | 'replaced',
  id: string,
  massKg: number,
  armMm: number,
): Change {
  if (kind === 'installed') return { kind, ...item(`N-${id}`, massKg, armMm) };
  if (kind === 'relocated') return { kind, item: id, armMm };
  if (kind === 'removed') return { kind, item: id, fate: 'owner' };
  return { kind, item: id, fate: 'scrapped', by: item(`N-${id}`, massKg, armMm) };
}

describe('equipmentChange()', () => {
  test('the list before and the signed lines make the list after', () => {
    fc.assert(
      fc.property(visits, (visit) => {
        const { before, after, lines, ...change } = equipmentChange(visit);
        const expected = total([weigh(before), change]);
        expect(weigh(after).massKg).toBeCloseTo(expected.massKg, 9);
        expect(weigh(after).momentKgMm).toBeCloseTo(expected.momentKgMm, 4);
        expect(total(lines).massKg).toBe(change.massKg);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });

  test('counts the mass weighed on removal, at the arm of the list', () => {
    const visit = visitWith(
      [item('E1', 2.35, 1290)],
      [],
      [{ kind: 'removed', item: 'E1', massKg: 2.41, fate: 'owner' }],
    );
    const [line] = equipmentChange(visit).lines;
    expect([line?.massKg, line?.momentKgMm]).toEqual([-2.41, -2.41 * 1290]);
  });

  test('counts an item found elsewhere before it counts its removal', () => {
    const visit = visitWith(
      [item('E1', 2, 1000)],
      [{ kind: 'different-mass', item: 'E1', massKg: 3, armMm: 1100 }],
      [{ kind: 'removed', item: 'E1', fate: 'owner' }],
    );
    const { lines, after } = equipmentChange(visit);
    expect(lines.map(({ massKg, momentKgMm }) => [massKg, momentKgMm])).toEqual([
      [1, 1300],
      [-3, -3300],
    ]);
    expect(after).toEqual([]);
  });

  test('counts nothing for an item that the list does not have, and says so', () => {
    const visit = visitWith([item('E1', 2, 1000)], [], [{ kind: 'removed', item: 'E9', fate: 'owner' }]);
    const { lines, massKg } = equipmentChange(visit);
    expect(lines.map(({ unlisted }) => unlisted)).toEqual([true]);
    expect(massKg).toBe(0);
  });

  test('a line number taken twice is reported, in the survey as in a modification', () => {
    const visit = visitWith(
      [item('E1', 2, 1000)],
      [{ kind: 'unlisted', ...item('E1', 1, 500) }],
      [{ kind: 'installed', ...item('E1', 1, 500) }],
    );
    const { corrections, changes } = equipmentChange(visit);
    expect([corrections[0]?.taken, changes[0]?.taken]).toEqual(['E1', 'E1']);
  });

  test('an item may take over the number of the one it replaces', () => {
    const visit = visitWith(
      [item('E1', 2, 1000)],
      [],
      [{ kind: 'replaced', item: 'E1', fate: 'owner', by: item('E1', 1, 900) }],
    );
    expect(equipmentChange(visit).changes[0]?.taken).toBeUndefined();
  });

  /** A group of listed items out, weighed again or not, and another group in; some take over a number. */
  const groups = fc
    .record({
      list: fc.array(fc.tuple(masses, arms), { minLength: 8, maxLength: 8 }),
      out: fc.uniqueArray(fc.integer({ min: 0, max: 8 }), { minLength: 1, maxLength: 6 }),
      weighed: fc.array(fc.option(masses, { nil: undefined }), { minLength: 9, maxLength: 9 }),
      incoming: fc.array(fc.tuple(masses, arms, fc.boolean()), { minLength: 1, maxLength: 6 }),
    })
    .map(({ list, out, weighed, incoming }) => ({
      equipment: list.map(([massKg, armMm], index) => item(`E${index}`, massKg, armMm)),
      // E8 is not on the list.
      out: out.map((index) => ({ item: `E${index}`, fate: 'stored' as const, massKg: weighed[index] })),
      in: incoming.map(([massKg, armMm, takesOver], index) =>
        item(takesOver && out[index] !== undefined ? `E${out[index]}` : `N${index}`, massKg, armMm),
      ),
    }));

  test('a group exchanged is the same removals and installations one by one', () => {
    fc.assert(
      fc.property(groups, ({ equipment, ...group }) => {
        const together = equipmentChange(visitWith(equipment, [], [{ kind: 'exchanged', ...group }]));
        const oneByOne = equipmentChange(
          visitWith(
            equipment,
            [],
            [
              ...group.out.map((out): Change => ({ kind: 'removed', ...out })),
              ...group.in.map((incoming): Change => ({ kind: 'installed', ...incoming })),
            ],
          ),
        );
        const unplaced = ({ lines }: typeof together) => lines.map(({ pointer: _pointer, ...line }) => line);
        expect(unplaced(together)).toEqual(unplaced(oneByOne));
        expect(together.after).toEqual(oneByOne.after);
        expect(together.changes.map(({ taken }) => taken)).toEqual(oneByOne.changes.map(({ taken }) => taken));
        expect([together.massKg, together.momentKgMm]).toEqual([oneByOne.massKg, oneByOne.momentKgMm]);
        expect(together.lines.map(({ pointer }) => pointer)).toEqual([
          ...group.out.map((_, index) => `/modifications/0/changes/0/out/${index}`),
          ...group.in.map((_, index) => `/modifications/0/changes/0/in/${index}`),
        ]);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });

  test('an update changes the version and no mass, and of a setting or a repair not the version', () => {
    const updates = fc.array(
      fc.tuple(
        fc.integer({ min: 0, max: 4 }),
        fc.constantFrom('software', 'firmware', 'database', 'setting', 'repair'),
        fc.integer({ min: 1, max: 9 }).map((to) => `SW ${to}`),
      ),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(updates, (made) => {
        const listed = [0, 1, 2, 3].map((index) => ({ ...item(`E${index}`, index + 1, 500), version: 'SW 0' }));
        const { before, after, lines, massKg, momentKgMm } = equipmentChange(
          visitWith(
            listed,
            [],
            made.map(([index, what, to]): Change => ({ kind: 'updated', item: `E${index}`, what, from: 'SW 0', to })),
          ),
        );
        expect([massKg, momentKgMm]).toEqual([0, 0]);
        const versions = (items: readonly EquipmentItem[]) => items.map(({ id, version }) => [id, version]);
        const expected = listed.map(({ id, version }) => [
          id,
          made.findLast(([index, what]) => `E${index}` === id && what !== 'setting' && what !== 'repair')?.[2] ??
            version,
        ]);
        expect(versions(after)).toEqual(expected);
        expect(after.map(({ version: _version, ...rest }) => rest)).toEqual(
          before.map(({ version: _version, ...rest }) => rest),
        );
        expect(lines.map(({ kind, unlisted }) => [kind, unlisted])).toEqual(
          made.map(([index]) => ['updated', index === 4]),
        );
      }),
      RUNS,
    );
  });
});
