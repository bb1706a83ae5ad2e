import { describe, expect, test } from 'vitest';
import { adjustmentName, budgetName, historyReason } from '../../worker/pack/line-name.ts';
import { ENGLISH_LEXICON } from '../../worker/words/lexicon.ts';
import { lexiconFor } from '../../worker/words/lexicons.ts';
import { wordsOf } from '../../worker/words/words.ts';

const english = { words: wordsOf(ENGLISH_LEXICON) };
const german = { words: wordsOf(lexiconFor('de')) };

describe('adjustmentName()', () => {
  test('says which fuel of which tank, and repeats the name of an item', () => {
    expect(adjustmentName({ kind: 'usable-fuel', tank: 'Left tank' }, english)).toBe('Usable fuel, Left tank');
    expect(adjustmentName({ kind: 'unusable-fuel', tank: 'Left tank' }, german)).toBe(
      'Nicht ausfliegbarer Kraftstoff, Left tank',
    );
    expect(adjustmentName({ kind: 'item-aboard', item: 'Usable fuel, Left tank' }, german)).toBe(
      'Usable fuel, Left tank',
    );
  });
});

describe('budgetName()', () => {
  test('names every component with what the record calls it', () => {
    const line = { kind: 'stated-fuel', tank: 'Main' } as const;
    expect(budgetName({ kind: 'scale-error-limit', scale: 'S1' }, english)).toBe(
      'Scale S1, error limit of its certificate',
    );
    expect(budgetName({ kind: 'display-step', point: 'Nose' }, english)).toBe('Nose, step of the display');
    expect(budgetName({ kind: 'arm-as-measured', point: 'Nose' }, english)).toBe('Nose, arm as measured');
    expect(budgetName({ kind: 'scatter', point: 'Nose', runs: 3 }, english)).toBe('Nose, scatter of 3 runs');
    expect(budgetName({ kind: 'mass-as-stated', line }, english)).toBe('Fuel, Main, mass as stated');
    expect(budgetName({ kind: 'mass-as-stated', line }, german)).toBe('Kraftstoff, Main, Masse wie angegeben');
  });
});

describe('historyReason()', () => {
  test('says our causes, and repeats those of the record', () => {
    expect(historyReason({ kind: 'weighed' }, german)).toBe('Gewogen');
    expect(historyReason({ kind: 'stated', reason: 'Weighed' }, german)).toBe('Weighed');
    expect(historyReason({ kind: 'baseline', reference: 'Record corrected as found' }, german)).toBe(
      'Record corrected as found',
    );
    expect(historyReason({ kind: 'modification', modification: 'M1', title: 'Radio' }, german)).toBe('M1 Radio');
  });
});
