import { describe, expect, test } from 'vitest';
import { adjustmentName, budgetName, historyReason } from '../../../worker/core/pack/line-name.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { ENGLISH, localeOf } from '../../../worker/core/text/locale.ts';

const UNITS = { mass: 'kg', arm: 'mm', volume: 'l' } as const;
const english = formatterFor(UNITS, ENGLISH);
const german = formatterFor(UNITS, localeOf('de'));

describe('adjustmentName()', () => {
  test('says which fuel of which tank, and repeats the name of an item', () => {
    expect(english.value(adjustmentName({ kind: 'usable-fuel', tank: 'Left tank' }))).toBe('Usable fuel, Left tank');
    expect(german.value(adjustmentName({ kind: 'unusable-fuel', tank: 'Left tank' }))).toBe(
      'Nicht ausfliegbarer Kraftstoff, Left tank',
    );
    expect(german.value(adjustmentName({ kind: 'item-aboard', item: 'Usable fuel, Left tank' }))).toBe(
      'Usable fuel, Left tank',
    );
  });
});

describe('budgetName()', () => {
  test('names every component with what the record calls it', () => {
    const line = { kind: 'stated-fuel', tank: 'Main' } as const;
    expect(english.value(budgetName({ kind: 'scale-error-limit', scale: 'S1' }))).toBe(
      'Scale S1, error limit of its certificate',
    );
    expect(english.value(budgetName({ kind: 'display-step', point: 'Nose' }))).toBe('Nose, step of the display');
    expect(english.value(budgetName({ kind: 'arm-as-measured', point: 'Nose' }))).toBe('Nose, arm as measured');
    expect(english.value(budgetName({ kind: 'scatter', point: 'Nose', runs: 3 }))).toBe('Nose, scatter of 3 runs');
    expect(english.value(budgetName({ kind: 'mass-as-stated', line }))).toBe('Fuel, Main, mass as stated');
    expect(german.value(budgetName({ kind: 'mass-as-stated', line }))).toBe('Kraftstoff, Main, Masse wie angegeben');
  });
});

describe('historyReason()', () => {
  test('says our causes, and repeats those of the record', () => {
    expect(german.value(historyReason({ kind: 'weighed' }))).toBe('Gewogen');
    expect(german.value(historyReason({ kind: 'stated', reason: 'Weighed' }))).toBe('Weighed');
    expect(german.value(historyReason({ kind: 'baseline', reference: 'Record corrected as found' }))).toBe(
      'Record corrected as found',
    );
    expect(german.value(historyReason({ kind: 'modification', modification: 'M1', title: 'Radio' }))).toBe('M1 Radio');
  });
});
