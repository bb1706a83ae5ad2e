import { expect, test } from 'vitest';
import { nearest } from '../../../worker/core/record/nearest.ts';

test('nearest() finds the word meant, and none where all are far', () => {
  const known = ['registration', 'regime', 'maximumMass', 'maximumLandingMass'];
  expect(nearest('regstration', known)).toBe('registration');
  expect(nearest('maximummass', known)).toBe('maximumMass');
  expect(nearest('colour', known)).toBeUndefined();
  expect(nearest('regime', [])).toBeUndefined();
});

test('nearest() gives up on a word longer than any field', () => {
  expect(nearest('regime'.repeat(2_000), ['regime'])).toBeUndefined();
});
