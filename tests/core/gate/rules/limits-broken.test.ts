import { describe, expect, test } from 'vitest';
import { patched } from '../../../json-patch.ts';
import { readFixture } from '../../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from '../assess-record.ts';

type Patch = Parameters<typeof patched>[1];

/** The sentence of one rule on a changed record. */
function sentenceOf(code: string, patch: Patch, name = 'nose-wheel-full'): string {
  const record = patched(readFixture(`visits/${name}`), patch);
  const found = assessRecord(record, RELEASABLE_AT[name] ?? '').findings.find((finding) => finding.code === code);
  return found?.sentence.replaceAll('\u00a0', ' ') ?? 'no finding';
}

const replaced = (path: string, value: unknown): Patch[number] => ({ op: 'replace', path, value });
const added = (path: string, value: unknown): Patch[number] => ({ op: 'add', path, value });

describe('a limit broken by less than a printed digit is printed as broken', () => {
  test('by figures of a test', () => {
    // 14 CFR 43: appendix E table I (20 ft at 0 ft), (a)(2) with former 23.1325(b)(2)(i) (100 ft), (c) (125 ft); appendix F
    // (a) (1090 ± 3 MHz).
    expect(
      sentenceOf('ALTIMETER_TEST_FAILED', [replaced('/surveillance/altimeters/0/scale/1/readFt', 20.004)]),
    ).toMatch(/20\.004 ft is outside its limits −20 to 20/);
    expect(sentenceOf('STATIC_SYSTEM_TEST_FAILED', [replaced('/surveillance/staticSystems/0/lossFt', 100.2)])).toMatch(
      /: 100\.2 ft is outside its limits not above 100/,
    );
    expect(
      sentenceOf('TRANSPONDER_TEST_FAILED', [replaced('/surveillance/transponderTest/replyFrequencyMhz', 1093.004)]),
    ).toMatch(/1093\.004 MHz is outside its limits 1087 to 1093/);
    expect(
      sentenceOf('ENCODER_CORRESPONDENCE_FAILED', [replaced('/surveillance/encoder/points/3/encoderFt', 5125.4)]),
    ).toMatch(/At 5000 ft the encoder reports 5125\.4 ft; the limit is 125 ft/);
  });

  test('by the drift of a direction indicator', () => {
    expect(
      sentenceOf('DIRECTION_INDICATOR_DRIFTS', [replaced('/compass/directionIndicator/driftDegPer15Min', 4.03)]),
    ).toBe('The direction indicator drifts 4.03° in 15 min; the limit is 4.00°');
  });

  test('by a voltage drop, and by a measured one', () => {
    // Row 2 of AC 43.13-1B table 11-7: 0.504 V for a limit of 0.5 V.
    const dropped = (volts: number): Patch => [added('/electrical/circuits/2/measuredDropV', volts)];
    expect(sentenceOf('VOLTAGE_DROP_EXCEEDED', dropped(0.504))).toMatch(/0\.504 V.*0\.500 V/);
    expect(sentenceOf('VOLTAGE_DROP_EXCEEDED', dropped(0.5000004))).toMatch(/0\.5000004 V.*0\.5000000 V/);
    expect(sentenceOf('VOLTAGE_DROP_EXCEEDED', dropped(0.5))).toBe('no finding');
  });

  test('by a load over 80 % of the sources', () => {
    const load = { id: 'A', name: 'A', change: 'kept', duty: 'continuous', isEssential: false, bus: 'main' };
    const loads = [{ ...load, amps: { takeOff: 16.04 } }];
    const unwatched: Patch = [
      replaced('/electrical/sources/0/isMonitored', false),
      replaced('/electrical/lowVoltageWarning/isFitted', false),
      replaced('/electrical/battery/charging', {}),
      replaced('/electrical/loads', loads),
    ];
    expect(sentenceOf('SOURCE_OVER_80_PERCENT', unwatched)).toMatch(/continuous load 16\.04 A is over 80 % of 20\.0 A/);
  });

  test('by the health and the energy of a traction battery', () => {
    const electric = (code: string, patch: Patch): string => sentenceOf(code, patch, 'electric-aeroplane');
    const health = replaced('/aircraft/energyStores/0/healthPercent', 79.96);
    expect(electric('TRACTION_BATTERY_WORN', [health])).toMatch(/: .*79,96 %.*80,00 %/);
    // At 60 kW the reserve is 1 kWh a minute: 2 Wh more than is usable.
    const { results } = assessRecord(
      readFixture('visits/electric-aeroplane'),
      RELEASABLE_AT['electric-aeroplane'] ?? '',
    );
    const reserveMin = (results.energy?.usableKwh ?? 0) + 0.002;
    const use = replaced('/aircraft/energyUse', { cruisePowerKw: 60, reserveMin });
    const [usable, reserve] = electric('ENERGY_SHORT', [use]).match(/\d+,\d+/g) ?? [];
    expect(Number(reserve?.replace(',', '.'))).toBeGreaterThan(Number(usable?.replace(',', '.')));
  });

  test('by the angle at which an aircraft hangs', () => {
    expect(sentenceOf('HANG_ANGLE_OUTSIDE', [replaced('/weighing/hangTests/0/angleDeg', 12.04)], 'gyroplane')).toMatch(
      /hangs at 12\.04°, permitted 6° to 12°/,
    );
  });

  test('by the sum of a list of equipment', () => {
    const { baseline } = readFixture('visits/nose-wheel-full') as {
      baseline: { emptyMass: number; equipment: { mass: number }[] };
    };
    const sum = baseline.equipment.reduce((total, { mass }) => total + mass, 0);
    const tolerance = Math.abs(sum - baseline.emptyMass) - 0.03;
    expect(sentenceOf('EQUIPMENT_SUM_DIFFERS', [added('/baseline/equipmentSumTolerance', tolerance)])).toMatch(
      new RegExp(`difference −${(tolerance + 0.03).toFixed(2)} kg, tolerance ${tolerance.toFixed(2)} kg`),
    );
  });

  test('by a loading that leaves the envelope', () => {
    // Each corner of the aft limit, moved to 0.2 mm ahead of the rearmost loading.
    const { results } = assessRecord(readFixture('visits/nose-wheel-full'), RELEASABLE_AT['nose-wheel-full'] ?? '');
    const aft = results.loading?.extremes?.margins.find(({ side }) => side === 'aft');
    const { aircraft } = readFixture('visits/nose-wheel-full') as { aircraft: { envelope: { arm: number }[] } };
    const rearmost = Math.max(...aircraft.envelope.map(({ arm }) => arm));
    const moved = aircraft.envelope.flatMap(({ arm }, index) =>
      arm === rearmost ? [replaced(`/aircraft/envelope/${index}/arm`, arm - (aft?.margin ?? 0) - 0.2)] : [],
    );
    expect(moved.length).toBeGreaterThan(0);
    expect(sentenceOf('ENVELOPE_EXCEEDED_BY_LEGAL_LOADING', moved)).toMatch(/is 0\.2 mm aft of the limit/);
  });
});

describe('a measured drop of a main power wire', () => {
  const thin: Patch = [replaced('/electrical/circuits/11/gauge', '6')];
  const measured = (volts: number): Patch => [...thin, added('/electrical/circuits/11/measuredDropV', volts)];
  const both = (patch: Patch) =>
    ['MAIN_FEEDER_DROP_COMPUTED', 'MAIN_FEEDER_DROP_EXCEEDED'].map((code) => sentenceOf(code, patch));

  test('outranks the computed one, which alone is only a caution', () => {
    // 2 % of 14 V: FAA-H-8083-31 chapter 9, voltage drop in wires.
    expect(both(thin)).toEqual([expect.stringMatching(/computed .* not measured; the limit is 0\.28 V/), 'no finding']);
    expect(both(measured(0.2))).toEqual(['no finding', 'no finding']);
    expect(both(measured(0.284))).toEqual(['no finding', expect.stringMatching(/0\.284 V; the limit is 0\.280 V/)]);
  });
});
