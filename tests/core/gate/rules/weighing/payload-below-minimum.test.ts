import { expect, test } from 'vitest';
import { generic } from '../../../../../worker/core/gate/regimes/generic.ts';
import { findingsOf, type RuleInput } from '../../../../../worker/core/gate/rule.ts';
import { ruleInput } from '../../../../../worker/core/gate/rule-input.ts';
import { payloadBelowMinimum } from '../../../../../worker/core/gate/rules/weighing/payload-below-minimum.ts';
import { inEnglish } from '../../../../../worker/core/text/formatter.ts';
import { readFixture } from '../../../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from '../../assess-record.ts';

/** The computed-only visit (450 kg, 277.02 kg empty, two seats, 12 l/h at 0.72 kg/l) under a regime that asks for a payload. */
function inputAsking(perSeatKg: number): RuleInput {
  const at = RELEASABLE_AT['computed-only'] ?? '';
  const { visit, results } = assessRecord(readFixture('visits/computed-only'), at);
  const regime = { ...generic, minimumPayload: { ...generic.minimumPayload, value: { perSeatKg, fuelHours: 1 } } };
  return ruleInput(visit, results, regime, { at, facts: {} });
}

test('payloadBelowMinimum is silent where the payload is just enough', () => {
  expect(findingsOf(payloadBelowMinimum, inputAsking(82.16))).toEqual([]);
});

test('payloadBelowMinimum says by how much the payload falls short', () => {
  const [finding] = findingsOf(payloadBelowMinimum, inputAsking(86));
  expect(finding?.pointer).toBe('/aircraft/maximumMass');
  // 450 − 277.02 − 2 · 86 − 12 · 0.72 = −7.66 kg
  expect(finding?.data.sparePayloadKg).toBeCloseTo(-7.66, 9);
  expect(finding && inEnglish(finding.sentence)).toContain('by 7.7\u00a0kg');
});
