import { expect, test } from 'vitest';
import { cgMm } from '../../../../../worker/core/calc/mass/mass-moment.ts';
import { meanOf } from '../../../../../worker/core/calc/weighing/uncertainty.ts';
import { readFixture } from '../../../../read-fixture.ts';
import { seededRandom } from '../../../calc/seeded-random.ts';
import { assessRecord } from '../../assess-record.ts';
import { type Reject, rejectedRecord } from '../../reject.ts';

const TRIALS = 40_000;
/** The spread of 40 000 trials is itself known to 1/√(2 · 40 000) = 0.35 %; four times that. */
const WITHIN = 0.015;

// Scales off by ten times as much: the mass of the empty aircraft then moves the loaded one as much as its arm does.
test.each([1, 10])(
  'the uncertainty of a loading is that of weighings drawn anew, scales %i times as uncertain',
  (times) => {
    const { record, at } = rejectedRecord(readFixture('rejects/ENVELOPE_WITHIN_UNCERTAINTY') as Reject);
    const { weighing, ...rest } = record as { weighing: { scales: { errorLimit: number }[] } };
    const scales = weighing.scales.map((scale) => ({ ...scale, errorLimit: scale.errorLimit * times }));
    const { findings, results } = assessRecord({ ...rest, weighing: { ...weighing, scales } }, at);
    const found = findings.filter(({ code }) => code === 'ENVELOPE_WITHIN_UNCERTAINTY');
    expect(found.length).toBeGreaterThan(0);
    for (const { data } of found) {
      const loaded = results.loading?.extremes?.margins.find(({ side }) => side === data.side)?.loading;
      if (!loaded) throw new Error('a finding on a side has a loading there');
      const draw = seededRandom(7);
      const drawn = Array.from({ length: TRIALS }, () => {
        const state = { ...loaded };
        for (const { standard, massSensitivity, momentSensitivity } of results.weighing?.budget ?? []) {
          const error = draw.normal(standard);
          state.massKg += massSensitivity * error;
          state.momentKgMm += momentSensitivity * error;
        }
        return cgMm(state);
      });
      const mean = meanOf(drawn);
      const spread = Math.sqrt(drawn.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (TRIALS - 1));
      expect(Math.abs(Number(data.uncertaintyMm) / (2 * spread) - 1)).toBeLessThan(WITHIN);
    }
  },
);
