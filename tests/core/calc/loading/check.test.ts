import { describe, expect, test } from 'vitest';
import { envelopeIn } from '../../../../worker/core/calc/loading/aircraft-envelope.ts';
import { checkLoading } from '../../../../worker/core/calc/loading/check.ts';
import { lateralOfEmpty } from '../../../../worker/core/calc/loading/empty-aircraft.ts';
import { tanksOf } from '../../../../worker/core/calc/loading/fuel.ts';
import { isBaggagePlace, loadStationsOf } from '../../../../worker/core/calc/loading/load-space.ts';
import { loadingFacts } from '../../../../worker/core/pack/loading-facts.ts';
import { fixturesIn } from '../../../read-fixture.ts';
import { RELEASABLE_AT } from '../../gate/assess-record.ts';
import { assessed, posted } from '../../pack/fixture.ts';

/** What the owner's page is given, after the way over the wire, and the sheet of the pack. */
async function given(name: string) {
  const { visit, results } = await assessed(posted(name), RELEASABLE_AT[name]);
  const facts = loadingFacts(visit, results);
  if (!facts || !results.loading) throw new Error('The visit has no loading sheet');
  const { aircraft, empty, leastPilot } = JSON.parse(JSON.stringify(facts)) as typeof facts;
  const envelope = envelopeIn(aircraft);
  return { aircraft, empty, leastPilot, lateral: lateralOfEmpty(empty), envelope, sheet: results.loading };
}

/** Baggage in the compartments in their order; what fits in none lies in the last. */
function stowed(bays: readonly { id: string; maximumMassKg: number }[], baggageKg: number): Record<string, number> {
  let left = baggageKg;
  return Object.fromEntries(
    bays.map(({ id, maximumMassKg }, index) => {
      const massKg = index === bays.length - 1 ? left : Math.min(left, maximumMassKg);
      left -= massKg;
      return [id, massKg];
    }),
  );
}

describe('checkLoading()', () => {
  test.each(fixturesIn('visits'))('says of every loading on the sheet of %s what the sheet says', async (name) => {
    const { aircraft, empty, envelope, leastPilot, lateral, sheet } = await given(name);
    for (const { path, verdict } of sheet.loadings) {
      const { load = {}, massKg = 0 } = path[0] ?? {};
      const check = checkLoading(aircraft, empty, { load, burnKg: 0, envelope, leastPilot, lateral });
      const isDry = tanksOf(aircraft).length > 0 && tanksOf(aircraft).every(({ id }) => !load[id]);
      // A corner of the envelope may have no fuel left; nobody takes off so.
      expect(check.verdict.state).toBe(verdict.state === 'inside' && isDry ? 'no-fuel' : verdict.state);
      // Masses are added up in another order, and an extreme ends on a chord of its tank: alike to a tenth of a micrometre.
      const [ours, theirs] = [check.verdict, verdict].map((each) =>
        'worst' in check.verdict && 'worst' in each ? each.worst : undefined,
      );
      expect(ours?.side).toBe(theirs?.side);
      expect(ours?.margin ?? 0).toBeCloseTo(theirs?.margin ?? 0, 4);
      expect(check.takeOff.massKg).toBeCloseTo(massKg, 9);
      expect(check.path.length).toBe(path.length);
    }
  });

  test.each(fixturesIn('visits'))(
    'allows the baggage of the table of %s, and no more where that is a limit',
    async (name) => {
      const { aircraft, empty, envelope, lateral, sheet } = await given(name);
      const bays = loadStationsOf(aircraft).filter(isBaggagePlace);
      const usable = tanksOf(aircraft).map(
        ({ id, capacityL, unusableL, densityKgPerL }) => [id, (capacityL - unusableL) * densityKgPerL] as const,
      );
      for (const { aboard, eachKg, cells } of sheet.table.rows) {
        const seats = sheet.table.seats.find((crew) => crew.aboard === aboard)?.stations ?? [];
        const crew = Object.fromEntries(seats.map((id) => [id, eachKg]));
        for (const [column, cell] of cells.entries()) {
          if (!('baggageKg' in cell)) continue;
          const fuel = Object.fromEntries(usable.map(([id, fullKg]) => [id, (fullKg * (column + 1)) / 4]));
          const stateWith = (baggageKg: number) => {
            const load = { ...crew, ...fuel, ...stowed(bays, baggageKg) };
            // The table is for take-off: the pilot plans the landing.
            const flown = { ...aircraft, maximumLandingMassKg: undefined };
            return checkLoading(flown, empty, { load, burnKg: 0, envelope, lateral }).verdict.state;
          };
          // The table ends where a limit is met but for its tolerance.
          expect(stateWith(Math.max(0, cell.baggageKg - 1e-6))).toBe('inside');
          if (bays.length > 0) expect(stateWith(cell.baggageKg + 0.5)).not.toBe('inside');
        }
      }
    },
  );

  test('says what would bring a loading inside, and it does', async () => {
    const { aircraft, empty, envelope } = await given('nose-wheel-full');
    const load = { 'left-seat': 100, 'right-seat': 100, baggage: 25, 'wing-tanks': 56 };
    const { verdict, cures } = checkLoading(aircraft, empty, { load, burnKg: 0, envelope });
    expect(verdict.state).toBe('too-heavy');
    expect(cures.map(({ station }) => station).sort()).toEqual(['baggage', 'wing-tanks']);
    for (const { station, byKg } of cures) {
      const cured = { ...load, [station]: (load[station as keyof typeof load] ?? 0) + byKg };
      expect(checkLoading(aircraft, empty, { load: cured, burnKg: 0, envelope }).verdict.state).toBe('inside');
    }
  });

  test('lands lighter by what is burnt, and nowhere when more is to be burnt than is aboard', async () => {
    const { aircraft, empty, envelope } = await given('nose-wheel-full');
    const load = { 'left-seat': 80, 'wing-tanks': 40 };
    const { takeOff, landing } = checkLoading(aircraft, empty, { load, burnKg: 15, envelope });
    expect(landing?.massKg).toBeCloseTo(takeOff.massKg - 15, 9);
    expect(checkLoading(aircraft, empty, { load, burnKg: 41, envelope }).landing).toBeUndefined();
  });

  test('holds the landing to its own maximum, and says what has to be burnt or left', async () => {
    const { aircraft, empty, envelope } = await given('nose-wheel-full');
    const capped = { ...aircraft, maximumLandingMassKg: 500 };
    // 325.86 + 90 + 80 + 56 = 551.9 kg: to land at 500 kg, 51.9 kg have to be burnt.
    const load = { 'left-seat': 90, 'right-seat': 80, 'wing-tanks': 56 };
    const of = (burnKg: number) => checkLoading(capped, empty, { load, burnKg, envelope });
    expect(of(52).verdict.state).toBe('inside');
    const { verdict, cures } = of(40);
    expect(verdict).toMatchObject({ state: 'limit-exceeded', exceeded: { kind: 'landing-mass' } });
    expect('overKg' in verdict && verdict.overKg).toBeCloseTo(empty.massKg + 226 - 40 - 500, 9);
    expect(cures).toEqual([{ station: 'wing-tanks', byKg: -12 }]);
  });

  test('has no cure for a loading that nobody flies, nor for a pilot who is too light', async () => {
    const { aircraft, empty, envelope, leastPilot } = await given('nose-wheel-full');
    for (const load of [{}, { 'right-seat': 80, 'wing-tanks': 40 }, { 'left-seat': 40, 'wing-tanks': 4 }]) {
      const { verdict, cures } = checkLoading(aircraft, empty, { load, burnKg: 0, envelope, leastPilot });
      expect(['no-pilot', 'too-light']).toContain(verdict.state);
      expect(cures).toEqual([]);
    }
  });

  test('finds a cure in steps of the field, and at once for what somebody mistyped by millions', async () => {
    const { aircraft, empty, envelope } = await given('nose-wheel-full');
    const halfLitre = 0.36;
    const load = { 'left-seat': 100, 'right-seat': 100, 'wing-tanks': 9e9 };
    const { cures } = checkLoading(aircraft, empty, {
      load,
      burnKg: 0,
      envelope,
      stepsKg: { 'wing-tanks': halfLitre },
    });
    expect(cures).toHaveLength(1);
    const leftKg = load['wing-tanks'] + (cures[0]?.byKg ?? 0);
    expect(leftKg).toBeLessThanOrEqual(78 * 0.72 + 1e-6);
    expect(leftKg).toBeGreaterThan(78 * 0.72 - halfLitre - 1e-6);
  });
});
