import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Cockpit, type CockpitState, cockpitGrid } from '../../../../worker/core/calc/loading/cockpit-grid.ts';
import { atArm, cgMm, total } from '../../../../worker/core/calc/mass/mass-moment.ts';
import { RUNS } from '../../../property-runs.ts';

/** An invented single-seat glider. */
const GLIDER = {
  emptyKg: 262,
  emptyMomentKgMm: 262 * 610,
  seatArmMm: -520,
  aftLimitMm: 400,
  forwardLimitMm: 240,
  nonLifting: { maximumKg: 245, parts: [{ massKg: 124.4 }, { massKg: 6.9 }] },
  maximumMassKg: 415.2,
  minimumKg: 55,
  maximumKg: 110,
} satisfies Cockpit;

const extra = fc.record({
  massKg: fc.integer({ min: -6, max: 60 }),
  armMm: fc.integer({ min: -300, max: 4800 }),
  isOptional: fc.boolean(),
  isNonLifting: fc.boolean(),
});

const state = fc.record({
  id: fc.constant('state'),
  extras: fc.array(extra, { maxLength: 4 }),
  minimumKg: fc.option(fc.integer({ min: 40, max: 120 }), { nil: undefined }),
  maximumKg: fc.option(fc.integer({ min: 60, max: 130 }), { nil: undefined }),
});

/** `undefined` left out, as records have it. */
const stated = ({ minimumKg, maximumKg, ...rest }: typeof state extends fc.Arbitrary<infer S> ? S : never) => ({
  ...rest,
  ...(minimumKg !== undefined && { minimumKg }),
  ...(maximumKg !== undefined && { maximumKg }),
});

/** Whether a pilot is within every limit, with every set of optional masses. */
function isPermitted({ extras, minimumKg = 0, maximumKg = 1e6 }: CockpitState, pilotKg: number): boolean {
  if (pilotKg < Math.max(GLIDER.minimumKg, minimumKg) || pilotKg > Math.min(GLIDER.maximumKg, maximumKg)) return false;
  const sets = extras.reduce<CockpitState['extras'][]>(
    (all, each) => [...all.map((set) => [...set, each]), ...(each.isOptional ? all : [])],
    [[]],
  );
  return sets.every((set) => {
    const loaded = total([
      { massKg: GLIDER.emptyKg, momentKgMm: GLIDER.emptyMomentKgMm },
      atArm(pilotKg, GLIDER.seatArmMm),
      ...set.map(({ massKg, armMm }) => atArm(massKg, armMm)),
    ]);
    const nonLiftingKg = set.reduce((sum, each) => sum + (each.isNonLifting ? each.massKg : 0), 131.3 + pilotKg);
    const arm = cgMm(loaded);
    return (
      arm <= GLIDER.aftLimitMm &&
      arm >= GLIDER.forwardLimitMm &&
      loaded.massKg <= GLIDER.maximumMassKg &&
      nonLiftingKg <= GLIDER.nonLifting.maximumKg
    );
  });
}

const rowOf = (cockpit: Cockpit, each: CockpitState) => cockpitGrid(cockpit, [each])?.[0];

describe('cockpitGrid()', () => {
  test('permits exactly the pilots that pass every limit with every set of optional masses', () => {
    fc.assert(
      fc.property(state, (drawn) => {
        const each = stated(drawn);
        const row = rowOf(GLIDER, each);
        const [fromKg, toKg] = [row?.minimum?.massKg ?? 0, row?.maximum?.massKg ?? 0];
        for (let pilotKg = 30.013; pilotKg < 140; pilotKg += 0.5)
          expect(isPermitted(each, pilotKg), `${pilotKg}`).toBe(pilotKg >= fromKg && pilotKg <= toKg);
        expect(row?.isFlyable).toBe(fromKg <= toKg);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });

  test('names the limit that, moved a little, moves the figure', () => {
    const looser: Record<string, Cockpit> = {
      'aft-limit': { ...GLIDER, aftLimitMm: GLIDER.aftLimitMm + 1 },
      'forward-limit': { ...GLIDER, forwardLimitMm: GLIDER.forwardLimitMm - 1 },
      'non-lifting-mass': { ...GLIDER, nonLifting: { ...GLIDER.nonLifting, maximumKg: 246 } },
      'maximum-mass': { ...GLIDER, maximumMassKg: 416.2 },
      'stated-minimum': { ...GLIDER, minimumKg: 54 },
      'stated-maximum': { ...GLIDER, maximumKg: 111 },
    };
    const seen = new Set<string>();
    fc.assert(
      fc.property(fc.array(extra, { maxLength: 4 }), (extras) => {
        const each = { id: 'state', extras };
        const row = rowOf(GLIDER, each);
        for (const side of ['minimum', 'maximum'] as const) {
          const found = row?.[side];
          const cockpit = found && looser[found.governedBy];
          if (!found || !cockpit) continue;
          seen.add(found.governedBy);
          const moved = rowOf(cockpit, each)?.[side]?.massKg ?? 0;
          expect(side === 'minimum' ? found.massKg - moved : moved - found.massKg).toBeGreaterThan(1e-6);
        }
      }),
      { ...RUNS, numRuns: 400 },
    );
    expect([...seen].sort()).toEqual(Object.keys(looser).sort());
  });

  test('keeps and marks a state whose minimum is above its maximum next to one in order', () => {
    const rows = cockpitGrid(GLIDER, [
      { id: 'fin-full', extras: [{ massKg: 12, armMm: 4700 }] },
      { id: 'fin-dry', extras: [] },
    ]);
    expect(rows?.map(({ id, isFlyable }) => [id, isFlyable])).toEqual([
      ['fin-full', false],
      ['fin-dry', true],
    ]);
    expect(rows?.[0]?.marginKg).toBeLessThan(0);
    expect(rows?.[0]?.minimum?.governedBy).toBe('aft-limit');
  });

  test('has neither limit where none is known, and no grid for a seat that is not ahead of the limits', () => {
    const { emptyKg, emptyMomentKgMm, seatArmMm } = GLIDER;
    const bare = { emptyKg, emptyMomentKgMm, seatArmMm };
    expect(rowOf(bare, { id: 'bare', extras: [] })).toEqual({
      id: 'bare',
      minimum: undefined,
      maximum: undefined,
      marginKg: undefined,
      isFlyable: true,
    });
    expect(cockpitGrid({ ...GLIDER, seatArmMm: 250 }, [])).toBeUndefined();
  });

  test('gives a stated limit no uncertainty, and one by maximum mass that of the weighing', () => {
    const budget = [
      { standard: 0.4, massSensitivity: 2, momentSensitivity: 0 },
      { standard: 3, massSensitivity: 0, momentSensitivity: 214 },
    ];
    const full = { id: 'full', extras: [{ massKg: 180, armMm: 330, standardKg: 0.6 }] };
    expect(rowOf({ ...GLIDER, budget }, { id: 'dry', extras: [] })?.maximum?.standardKg).toBe(0);
    const row = rowOf({ ...GLIDER, budget }, full);
    expect(row?.maximum?.governedBy).toBe('maximum-mass');
    expect(row?.maximum?.standardKg).toBeCloseTo(Math.sqrt(0.8 ** 2 + 0.6 ** 2), 12);
  });
});
