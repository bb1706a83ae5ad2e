import { describe, expect, test } from 'vitest';
import { unprintableIn } from '../../worker/text/printable.ts';
import browser from '../../worker/words/de/browser.json' with { type: 'json' };
import { GERMAN } from '../../worker/words/de/catalogue.ts';
import { englishTexts, textAt } from './english-texts.ts';
import { offeredChoices } from './offered-choices.ts';

/** Without the document that a key holds in. */
const englishOf = (key: string): string => key.replace(/^[a-z-]+ \| /, '');
const places = (text: string): string[] => [...new Set(text.match(/\{\d+\}/g) ?? [])].sort();

/** Choices of the schema that no document prints. */
const UNPRINTED = [
  ...['kg', 'lb', 'mm', 'cm', 'm', 'l', 'usgal', 'impgal', 'A4', 'Letter', 'en', 'de', 'EUR', 'USD', 'GBP', 'CHF'],
  ...['SEK', 'NOK', 'DKK', 'PLN', 'CZK', 'CAD', 'AUD', 'NZD', '105', '150', '200'],
  ...['0', '1', '2', '4', '6', '8', '10', '12', '14', '16', '18', '20', '22', '24', '26', '00', '000', '0000'],
  ...['AC-1A', 'AC-2A', 'AC-1B', 'AC-2B', 'AC-3B', 'S-1A', 'S-2A', 'S-3A', 'S-4', 'S-1B', 'S-2B', 'S-3B'],
  ...['nose-wheel', 'tail-wheel', 'pilot', 'passenger', 'baggage', 'fuel', 'previous-pack', 'schedule', 'maker'],
  ...['estimated', 'in-hand', 'waiting', 'declined'],
  ...['installed', 'relocated', 'replaced', 'in-place', 'owed', 'not-done', 'after-release', 'bus', 'protection'],
  ...['splice', 'terminal', 'switch', 'copper', 'aluminium', '14-volt', '28-volt', 'source', 'battery', 'correct'],
  ...['wrong', 'not-fitted', 'operative', 'inoperative', 'certified', 'uncertified', 'surveyed-base', 'datum-compass'],
  ...['satellite-track', 'before', 'after', 'satisfactory', 'rectified'],
  ...['not-applicable', 'life-limit', 'recommendation', 'watch', 'monitor', 'release-certificate'],
  ...['conformity-certificate', 'maker-statement', 'owner-declaration', 'standard-part'],
  ...['left', 'right', 'centre', 'drained-to-unusable', 'dry'],
];

/** Code that says something in a reader's browser, where only few texts are. */
const IN_BROWSER = [
  'site/client/loading-check.ts',
  'site/client/loading/answer.ts',
  'site/client/loading/fields.ts',
  'site/client/loading/form.ts',
  'site/client/offline-page.ts',
  'worker/pack/chart/envelope-drawing.ts',
  'worker/pack/mass-limit-name.ts',
];

describe('the German catalogue', () => {
  const texts = englishTexts();

  test('has every text of templates and code', () => {
    const documents = [...new Set(Object.keys(GERMAN).flatMap((key) => /^([a-z-]+) \| /.exec(key)?.[1] ?? []))];
    const has = (text: string): boolean =>
      text in GERMAN || documents.some((document) => `${document} | ${text}` in GERMAN);
    expect(texts.length).toBeGreaterThan(800);
    expect(texts.filter(({ text }) => /\p{L}/u.test(text) && !has(text))).toEqual([]);
  });

  test('has for browsers every text that is said there', () => {
    const said = texts.filter(({ where }) => IN_BROWSER.includes(where));
    expect(new Set(said.map(({ where }) => where)).size).toBe(IN_BROWSER.length);
    expect(said.filter(({ text }) => /\p{L}/u.test(text) && !(text in browser))).toEqual([]);
  });

  test('has every choice of the schema that is printed', () => {
    const untold = offeredChoices().filter((choice) => !UNPRINTED.includes(choice) && !(choice in GERMAN));
    expect(untold).toEqual([]);
  });

  test('fills in what the English text fills in', () => {
    const differing = Object.entries(GERMAN).filter(
      ([key, german]) => places(englishOf(key)).join() !== places(german).join(),
    );
    expect(differing).toEqual([]);
  });

  test('can be printed', () => {
    expect(Object.values(GERMAN).flatMap(unprintableIn)).toEqual([]);
  });

  test('has no mark-up of its own, since templates put it into HTML as it is', () => {
    expect(Object.values(GERMAN).filter((german) => /[<>&"]/.test(german))).toEqual([]);
  });
});

describe('textAt() reads a tagged template', () => {
  test('with places that hold templates themselves', () => {
    const code = `words\`a \${b ? \`, \${c}\` : ''} and \${d({ e: 1 })}.\``;
    expect(textAt(code, 'words`'.length)).toBe('a {0} and {1}.');
  });

  test('with escapes', () => expect(textAt('No.\\u00a0$\\`x\\``', 0)).toBe('No.\u00a0$`x`'));
});
