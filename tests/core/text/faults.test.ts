import { expect, test } from 'vitest';
import { fault, saidFault } from '../../../worker/core/text/faults.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { ENGLISH, localeOf } from '../../../worker/core/text/locale.ts';

const UNITS = { mass: 'kg', arm: 'mm', volume: 'l' } as const;
const [english, german] = [formatterFor(UNITS, ENGLISH), formatterFor(UNITS, localeOf('de'))];

test.each([
  [fault('encrypted'), 'it is encrypted', 'verschlüsselt'],
  [
    fault('font-not-embedded', { name: 'Frutiger-Roman (1.5)' }),
    'the font Frutiger-Roman (1.5) is not embedded',
    'die Schrift Frutiger-Roman (1.5) ist nicht eingebettet',
  ],
  [
    fault('mb-mb-most', { length: 13.5, annexBytes: 12 }),
    'it has 13.5 MB, and 12 MB are the most',
    'hat 13,5 MB, höchstens 12 MB sind zulässig',
  ],
])('a fault of a file is kept as data and said in each language', (kept, inEnglish, inGerman) => {
  const read = JSON.parse(JSON.stringify(kept));
  expect(english.value(saidFault(read))).toBe(inEnglish);
  expect(german.value(saidFault(read))).toBe(inGerman);
});

test('a sentence that an earlier edition kept stays as it is', () => {
  expect(german.value(saidFault('it is encrypted'))).toBe('it is encrypted');
});

test('a fault that a later edition kept is called by its id', () => {
  expect(german.value(saidFault({ id: 'of-another-edition' } as never))).toBe('of-another-edition');
});
