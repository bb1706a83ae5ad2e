import { describe, expect, test } from 'vitest';
import { measurementResults } from '../../../../worker/core/calc/measurements/measurements.ts';
import { pitotFigures } from '../../../../worker/core/calc/surveillance/pitot-system.ts';
import { readVisit } from '../read-visit.ts';

describe('measurementResults()', () => {
  test('counts both ends of a torque as within', () => {
    const torque = readVisit('nose-wheel-full').measurements?.torques?.[0];
    if (!torque) throw new Error('the full visit has torques');
    const isWithin = (value: number) => measurementResults({ torques: [{ ...torque, value }] }).torques[0]?.isWithin;
    expect([21.99, 22, 26, 26.01].map(isWithin)).toEqual([false, true, true, false]);
  });

  test('takes the error of a heading the shorter way round', () => {
    const check = readVisit('four-seat-tourer').measurements?.magnetometers?.[0];
    if (!check) throw new Error('the tourer has a magnetometer');
    const readings = [
      { headingDeg: 360, compassDeg: 4 },
      { headingDeg: 2, compassDeg: 357 },
      { headingDeg: 180, compassDeg: 176 },
    ];
    const [result] = measurementResults({ magnetometers: [{ ...check, limitDeg: 4, readings }] }).magnetometers;
    expect(result?.figures.map(({ value, isWithin }) => [value, isWithin])).toEqual([
      [4, true],
      [-5, false],
      [-4, true],
    ]);
  });

  test('has vibration in inches per second and track split in millimetres', () => {
    const { balances } = measurementResults(readVisit('helicopter').measurements ?? {});
    expect(balances.map(({ figures }) => figures.map(({ unit, isWithin }) => [unit, isWithin]))).toEqual([
      [
        ['in/s', false],
        ['mm', false],
      ],
      [
        ['in/s', true],
        ['mm', true],
      ],
      [['in/s', true]],
    ]);
  });
});

describe('pitotFigures()', () => {
  // AC 43.13-1B par. 12-59, read: 150 kt applied, leakage up to 10 kt after 1 minute.
  const leak = { appliedSpeed: 150, lossSpeed: 10, seconds: 60, limitSpeed: 10 };

  test('holds the leak against its limit', () => {
    const within = (lossSpeed: number) => pitotFigures({ unit: 'kt', leak: { ...leak, lossSpeed } })[0]?.isWithin;
    expect([10, 10.1].map(within)).toEqual([true, false]);
  });

  test('takes the error as what is read less what is set, in both directions', () => {
    const points = [
      { setSpeed: 60, readSpeed: 63, limitSpeed: 3 },
      { setSpeed: 80, readSpeed: 76, limitSpeed: 3 },
    ];
    expect(pitotFigures({ unit: 'km/h', points }).map(({ value, unit, isWithin }) => [value, unit, isWithin])).toEqual([
      [3, 'km/h', true],
      [-4, 'km/h', false],
    ]);
  });
});
