import { expect, test } from 'vitest';
import { ENGLISH_LEXICON } from '../../worker/words/lexicon.ts';
import { lexiconFor } from '../../worker/words/lexicons.ts';
import { retold } from '../../worker/words/retold.ts';

const german = lexiconFor('de');

test.each([
  ['it is encrypted', 'verschlüsselt'],
  ['it has 13.5 MB, and 12 MB are the most', 'hat 13,5 MB, höchstens 12 MB sind zulässig'],
  ['the font Frutiger-Roman (1.5) is not embedded', 'die Schrift Frutiger-Roman (1.5) ist nicht eingebettet'],
  [
    'the picture has 9000 × 8000 pixels, and 40 million are the most',
    /^das Bild hat 9000 × 8000 Pixel, höchstens 40 M/,
  ],
])('retold() says “%s” in German', (sentence, said) => {
  expect(retold(sentence, german)).toMatch(said);
  expect(retold(sentence, ENGLISH_LEXICON)).toBe(sentence);
});

test('retold() leaves a sentence that is not ours as it is', () => {
  expect(retold('somebody wrote this', german)).toBe('somebody wrote this');
});
