import { describe, expect, test } from 'vitest';
import { envelopeIn } from '../../../../worker/core/calc/loading/aircraft-envelope.ts';
import { burnPathOf } from '../../../../worker/core/calc/loading/burn-path.ts';
import { crewFuelTable } from '../../../../worker/core/calc/loading/crew-fuel-table.ts';
import { loadingOf } from '../../../../worker/core/calc/loading/loading-of.ts';
import { judgeOf } from '../../../../worker/core/calc/loading/verdict.ts';
import { cgMm } from '../../../../worker/core/calc/mass/mass-moment.ts';
import type { Aircraft, Station } from '../../../../worker/core/record/visit.ts';
import { readVisit } from '../read-visit.ts';

const { aircraft } = readVisit('nose-wheel-full');
const EMPTY = { massKg: 326, momentKgMm: 326 * 1650 };
const envelope = envelopeIn(aircraft);

const verdictOf = (load: Record<string, number>, of = aircraft) =>
  judgeOf(of, { envelope })(loadingOf(of, EMPTY, load));

describe('judgeOf()', () => {
  test('passes a loading inside every limit, and says how far inside', () => {
    const verdict = verdictOf({ 'left-seat': 86, 'wing-tanks': 40 });
    expect(verdict.state).toBe('inside');
    expect(verdict.state === 'inside' && (verdict.worst?.margin ?? 0) > 0).toBe(true);
  });

  test('calls a loading forward, not sideways, that is in front of both limits', () => {
    const nose = { massKg: 326, momentKgMm: 326 * 1300 };
    const loading = loadingOf(aircraft, nose, { 'left-seat': 86 });
    const [front, rear] = [cgMm(loading) + 10, cgMm(loading) + 1000];
    const corners = [
      { armMm: front, lateralArmMm: -100 },
      { armMm: rear, lateralArmMm: -100 },
      { armMm: rear, lateralArmMm: 100 },
      { armMm: front, lateralArmMm: 100 },
    ];
    const of = { ...aircraft, lateralEnvelope: { by: 'arm' as const, corners } };
    const lateral = { massKg: nose.massKg, lateralKgMm: 0 };
    expect(judgeOf(of, { lateral })(loading).state).toBe('outside-laterally');
    expect(judgeOf(of, { envelope, lateral })(loading)).toMatchObject({ state: 'outside', worst: { side: 'forward' } });
  });

  test('refuses above the maximum mass', () => {
    expect(verdictOf({ 'left-seat': 110, 'right-seat': 90, baggage: 25, 'wing-tanks': 56 })).toEqual({
      state: 'too-heavy',
      overKg: 7,
    });
  });

  test('refuses above a station’s own limit and above a limit that joins stations', () => {
    expect(verdictOf({ 'left-seat': 111 })).toEqual({
      state: 'limit-exceeded',
      exceeded: { kind: 'station', id: 'left-seat' },
      overKg: 1,
    });
    expect(verdictOf({ 'left-seat': 105, 'right-seat': 100 })).toEqual({
      state: 'limit-exceeded',
      exceeded: { kind: 'loading-limit', id: 'seats' },
      overKg: 5,
    });
  });

  test('refuses more fuel than a tank holds above its unusable fuel', () => {
    expect(verdictOf({ 'left-seat': 85, 'wing-tanks': 95 * 0.72 })).toMatchObject({
      state: 'limit-exceeded',
      exceeded: { kind: 'station', id: 'wing-tanks' },
    });
    expect(verdictOf({ 'left-seat': 85, 'wing-tanks': 78 * 0.72 }).state).toBe('inside');
  });

  test('refuses above the maximum zero-fuel mass, whatever the fuel', () => {
    const capped = { ...aircraft, maximumZeroFuelMassKg: 500 };
    const expected = { state: 'limit-exceeded', exceeded: { kind: 'zero-fuel-mass' }, overKg: 6 };
    expect(verdictOf({ 'left-seat': 100, 'right-seat': 80 }, capped)).toEqual(expected);
    expect(verdictOf({ 'left-seat': 100, 'right-seat': 80, 'wing-tanks': 50 }, capped)).toEqual(expected);
    expect(verdictOf({ 'left-seat': 100, 'right-seat': 74, 'wing-tanks': 50 }, capped).state).toBe('inside');
  });

  test('refuses what is too heavy to land even without fuel', () => {
    const capped = { ...aircraft, maximumLandingMassKg: 500 };
    const expected = { state: 'limit-exceeded', exceeded: { kind: 'landing-mass' }, overKg: 6 };
    expect(verdictOf({ 'left-seat': 100, 'right-seat': 80, 'wing-tanks': 50 }, capped)).toEqual(expected);
    expect(verdictOf({ 'left-seat': 100, 'right-seat': 74, 'wing-tanks': 50 }, capped).state).toBe('inside');
  });

  test('passes nothing that nobody flies', () => {
    expect(verdictOf({})).toEqual({ state: 'no-pilot' });
    expect(verdictOf({ 'right-seat': 80, baggage: 10, 'wing-tanks': 40 })).toEqual({ state: 'no-pilot' });
  });

  test('refuses a pilot who is lighter than the aircraft states, alone or not', () => {
    const expected = { state: 'too-light', station: 'left-seat', leastKg: 55, underKg: 15 };
    expect(verdictOf({ 'left-seat': 40, 'wing-tanks': 4 })).toEqual(expected);
    expect(verdictOf({ 'left-seat': 40, 'right-seat': 80, 'wing-tanks': 4 })).toEqual(expected);
    expect(verdictOf({ 'left-seat': 55, 'wing-tanks': 4 }).state).toBe('inside');
  });

  test('refuses a pilot alone who is lighter than the least solo pilot, and not with somebody beside', () => {
    const leastPilot = { station: 'left-seat', kg: 62.5, governedBy: 'envelope' } as const;
    const judge = judgeOf(aircraft, { envelope, leastPilot });
    const verdict = (load: Record<string, number>) => judge(loadingOf(aircraft, EMPTY, load));
    expect(verdict({ 'left-seat': 60, 'wing-tanks': 20 })).toMatchObject({ state: 'too-light', underKg: 2.5 });
    expect(verdict({ 'left-seat': 60, 'right-seat': 70, 'wing-tanks': 20 }).state).toBe('inside');
    expect(verdict({ 'left-seat': 62.5, 'wing-tanks': 20 }).state).toBe('inside');
  });

  test('refuses anybody alone where nobody may be', () => {
    const leastPilot = { station: 'left-seat', kg: undefined, governedBy: 'envelope' } as const;
    const judge = judgeOf(aircraft, { envelope, leastPilot });
    expect(judge(loadingOf(aircraft, EMPTY, { 'left-seat': 90 }))).toEqual({ state: 'no-solo', station: 'left-seat' });
    expect(judge(loadingOf(aircraft, EMPTY, { 'left-seat': 90, 'right-seat': 80 })).state).toBe('inside');
  });

  test('refuses a loading that is inside at take-off and goes outside as fuel burns', () => {
    const tank = {
      id: 'tail-tank',
      name: 'Tail tank',
      kind: 'fuel' as const,
      armMm: 3000,
      capacityL: 60,
      unusableL: 0,
      densityKgPerL: 0.72,
    };
    const withTail = { ...aircraft, stations: [...aircraft.stations.filter(({ kind }) => kind !== 'fuel'), tank] };
    const heavyNose = { massKg: 326, momentKgMm: 326 * 1580 };
    const loading = loadingOf(withTail, heavyNose, { 'left-seat': 60, 'tail-tank': 43 });
    expect(cgMm(loading)).toBeGreaterThan(1640);
    const verdict = judgeOf(withTail, { envelope })(loading);
    expect(verdict.state === 'outside' && verdict.worst.side).toBe('forward');
  });

  test('meets limits exactly without complaint', () => {
    expect(verdictOf({ 'left-seat': 110, 'right-seat': 90, baggage: 25, 'wing-tanks': 49 }).state).toBe('inside');
  });
});

describe('burnPathOf()', () => {
  const { aircraft: tailWheel } = readVisit('weighing-only');

  test('empties tanks in their order, lower numbers first, and ends with nothing usable', () => {
    const start = loadingOf(tailWheel, { massKg: 340, momentKgMm: 100_000 }, { 'header-tank': 20, 'wing-tank': 30 });
    const path = burnPathOf(tailWheel)(start);
    expect(path.map(({ load }) => [load['header-tank'], load['wing-tank']])).toEqual([
      [20, 30],
      [20, 0],
      [0, 0],
    ]);
    expect(path.at(-1)?.massKg).toBeCloseTo(340, 9);
    expect(path.at(-1)?.momentKgMm).toBeCloseTo(100_000, 6);
  });

  test('burns tanks of one order together, in proportion', () => {
    const together = {
      ...tailWheel,
      stations: tailWheel.stations.map((station) => (station.kind === 'fuel' ? { ...station, burnOrder: 1 } : station)),
    };
    const start = loadingOf(together, { massKg: 340, momentKgMm: 100_000 }, { 'header-tank': 10, 'wing-tank': 30 });
    expect(burnPathOf(together)(start)).toHaveLength(2);
  });
});

describe('crewFuelTable()', () => {
  const table = crewFuelTable(aircraft, EMPTY, [50, 60, 70, 110, 120], judgeOf(aircraft, { envelope }));

  test('has no row for a person lighter than the placard allows or heavier than the seat carries', () => {
    expect(table.rows.map(({ aboard, eachKg }) => [aboard, eachKg])).toEqual([
      ['solo', 60],
      ['solo', 70],
      ['solo', 110],
      ['two', 60],
      ['two', 70],
      ['two', 110],
    ]);
  });

  test('allows no more baggage than judgeOf() passes, and not a tenth of a kilogram less', () => {
    const judge = judgeOf(aircraft, { envelope });
    for (const { aboard, eachKg, cells } of table.rows) {
      for (const [index, cell] of cells.entries()) {
        const fuelKg = (table.usableL[index] ?? 0) * 0.72;
        const crew = { 'left-seat': eachKg, 'right-seat': aboard === 'two' ? eachKg : 0, 'wing-tanks': fuelKg };
        const stateWith = (baggage: number): string => judge(loadingOf(aircraft, EMPTY, { ...crew, baggage })).state;
        if ('refused' in cell) expect(stateWith(0)).toBe(cell.refused.state);
        else {
          expect(stateWith(cell.baggageKg)).toBe('inside');
          if (cell.baggageKg < 25) expect(stateWith(cell.baggageKg + 0.1)).not.toBe('inside');
        }
      }
    }
  });

  const four = {
    ...aircraft,
    seats: 4,
    stations: aircraft.stations.flatMap((station): Station[] =>
      station.id === 'right-seat'
        ? [station, ...['rear-left', 'rear-right'].map((id) => ({ ...station, id, armMm: 2600, name: id }))]
        : [station],
    ),
  } as Aircraft;

  test('has rows for every seat of four, and says who sits where', () => {
    const { seats, rows } = crewFuelTable(four, EMPTY, [60], judgeOf(four));
    expect(seats).toEqual([
      { aboard: 'solo', stations: ['left-seat'] },
      { aboard: 'two', stations: ['left-seat', 'right-seat'] },
      { aboard: 'all', stations: ['left-seat', 'right-seat', 'rear-left', 'rear-right'] },
    ]);
    // 580 − 326 − 4 × 60 kg leave 14 kg without fuel, and 600 − 326 − 240 − 28.08 kg of half the tanks 5.92 kg.
    const all = rows.find(({ aboard }) => aboard === 'all')?.cells ?? [];
    expect(all.slice(0, 2)).toEqual([{ baggageKg: expect.closeTo(14, 4) }, { baggageKg: expect.closeTo(5.92, 4) }]);
    expect(all.slice(2).map((cell) => 'refused' in cell && cell.refused.state)).toEqual(['too-heavy', 'too-heavy']);
  });

  test('has none where several share a station: nobody knows how many sit there', () => {
    const bench = { ...four, stations: four.stations.filter(({ id }) => id !== 'rear-right') } as Aircraft;
    expect(crewFuelTable(bench, EMPTY, [60], judgeOf(bench)).seats.map(({ aboard }) => aboard)).toEqual([
      'solo',
      'two',
    ]);
  });
});
