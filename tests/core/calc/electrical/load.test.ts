import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batteryEndurance, enduranceOn } from '../../../../worker/core/calc/electrical/endurance.ts';
import { loadByPhase } from '../../../../worker/core/calc/electrical/load.ts';
import type { Electrical } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

function demo(): Electrical {
  const { electrical } = readVisit('nose-wheel-full');
  if (!electrical) throw new Error('the full visit has an electrical part');
  return electrical;
}

const phase = (electrical: Electrical, name: string) => loadByPhase(electrical).find((entry) => entry.phase === name);

/** The conspicuity device stays on when the source fails: 5.5 W. */
const onBattery = (electrical: ReturnType<typeof demo>): ReturnType<typeof demo> => ({
  ...electrical,
  loads: electrical.loads.map((load) =>
    load.id === 'L-CONSP' ? { ...load, watts: { ...load.watts, sourceFailed: 5.5 } } : load,
  ),
});

describe('loadByPhase()', () => {
  test('sets what is aboard after the visit beside what was aboard before it', () => {
    const cruise = phase(demo(), 'cruise');
    // 0.4 + 1.8 + 0.15 + 0.45 + 0.6 + 5.5/14 + 0.2 after; 0.4 + 1.8 + 0.9 + 1.6 + 0.5 + 0.25 before; 0.5 charges the
    // battery.
    expect(cruise?.continuousA).toBeCloseTo(4.1 + 5.5 / 14, 9);
    expect(cruise?.before.continuousA).toBeCloseTo(5.95, 9);
    expect(cruise?.peakA).toBeCloseTo(5.8 + 5.5 / 14, 9);
  });

  test('turns a power into more current on the battery than on the source', () => {
    const failed = phase(onBattery(demo()), 'sourceFailed');
    expect(failed?.continuousA).toBeCloseTo(3.3 + 5.5 / 12, 9);
    expect(failed?.capacityA).toBeUndefined();
  });

  test('reads the source off its curve, never above rating or regulator', () => {
    expect(phase(demo(), 'taxi')?.capacityA).toBe(11);
    expect(phase(demo(), 'cruise')?.capacityA).toBeCloseTo(19.6, 9);
    const weak = { ...demo(), sources: demo().sources.map((source) => ({ ...source, regulatorA: 14 })) };
    expect(phase(weak, 'takeOff')?.capacityA).toBe(14);
  });

  test('counts a curve without an engine speed with its least output', () => {
    const { engineRpm: _engineRpm, ...electrical } = demo();
    expect(phase(electrical, 'cruise')?.capacityA).toBe(6);
  });
});

test('loadByPhase() counts the battery as a load while a source charges it, before the visit and after', () => {
  const electrical = demo();
  const { battery } = electrical;
  if (!battery) throw new Error('the full visit has a battery');
  const charged = { ...electrical, battery: { ...battery, charging: { taxi: 6, cruise: 1 } } };
  for (const name of ['start', 'taxi', 'takeOff', 'cruise', 'landing', 'sourceFailed'] as const) {
    const more = name === 'taxi' ? 6 : name === 'cruise' ? 1 : 0;
    const [with_, without] = [
      phase(charged, name),
      phase({ ...electrical, battery: { ...battery, charging: {} } }, name),
    ];
    expect((with_?.continuousA ?? 0) - (without?.continuousA ?? 0), name).toBeCloseTo(more, 9);
    expect((with_?.peakA ?? 0) - (without?.peakA ?? 0), name).toBeCloseTo(more, 9);
    expect((with_?.before.continuousA ?? 0) - (without?.before.continuousA ?? 0), name).toBeCloseTo(more, 9);
  }
  expect(batteryEndurance(charged)).toEqual(batteryEndurance({ ...electrical, battery: { ...battery, charging: {} } }));
});

describe('enduranceOn()', () => {
  const amps = fc.double({ min: 0.1, max: 60, noNaN: true });
  const minutes = fc.double({ min: 0, max: 30, noNaN: true });

  test('spends exactly what the battery has', () =>
    fc.assert(
      fc.property(amps, minutes, amps, minutes, amps, amps, (recA, recMin, landA, landMin, shedA, usableAh) => {
        const result = enduranceOn({
          usableAh,
          recognise: { loadA: recA, minutes: recMin },
          landing: { loadA: landA, minutes: landMin },
          shedA,
        });
        const spent = result.stretches.reduce((sum, { ampMinutes }) => sum + ampMinutes, 0);
        expect(spent / result.usableAmpMinutes).toBeCloseTo(1, 9);
      }),
      RUNS,
    ));

  test('keeps the landing in hand before the rest is spent, and ends early when there is no rest', () => {
    const short = enduranceOn({
      usableAh: 1,
      recognise: { loadA: 6, minutes: 5 },
      landing: { loadA: 10, minutes: 10 },
      shedA: 3,
    });
    expect(short.stretches.map((stretch) => stretch.minutes)).toEqual([5, 0, 3]);
    expect(short.minutes).toBe(8);
  });

  test('does not end where nothing draws current', () => {
    const idle = enduranceOn({
      usableAh: 10,
      recognise: { loadA: 0, minutes: 5 },
      landing: { loadA: 0, minutes: 10 },
      shedA: 0,
    });
    expect(idle.minutes).toBeUndefined();
  });
});

test('batteryEndurance() asks for half an hour where the record states no reserve', () => {
  const electrical = onBattery(demo());
  const { battery } = electrical;
  if (!battery) throw new Error('the full visit has a battery');
  const { reserveMin: _reserveMin, ...rest } = battery;
  expect(batteryEndurance({ ...electrical, battery: rest })?.neededMin).toBe(30);
  // 810 A·min less 5 min of cruise and 10 min of landing, over the loads that stay on
  const shedA = 3.3 + 5.5 / 12;
  const landingA = 0.4 + 1.5 + 0.15 + 0.45 + 1.7 + 0.6 + 0.2 + 5.5 / 12;
  expect(batteryEndurance(electrical)?.minutes).toBeCloseTo(
    15 + (810 - 5 * (3.6 + 5.5 / 14) - 10 * landingA) / shedA,
    9,
  );
});
