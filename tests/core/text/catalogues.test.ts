import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readCatalogue } from '../../../worker/core/text/build/catalogue.ts';
import { LANGUAGES } from '../../../worker/core/text/languages.ts';
import { unprintableIn } from '../../../worker/core/text/printable.ts';
import { offeredChoices } from './offered-choices.ts';

const ROOT = join(import.meta.dirname, '../../..');
const FOLDER = join(ROOT, 'worker/core/text/messages');

/** Choices of the schema that no document prints. */
const UNPRINTED = [
  ...['kg', 'lb', 'mm', 'cm', 'm', 'l', 'usgal', 'impgal', 'A4', 'Letter', 'EUR', 'USD', 'GBP', 'CHF'],
  ...['kt', 'km/h', 'mph', 'N·m', 'in·lbf', 'ft·lbf'],
  ...['SEK', 'NOK', 'DKK', 'PLN', 'CZK', 'CAD', 'AUD', 'NZD', '105', '150', '200'],
  ...['0', '1', '2', '4', '6', '8', '10', '12', '14', '16', '18', '20', '22', '24', '26', '00', '000', '0000'],
  ...['AC-1A', 'AC-2A', 'AC-1B', 'AC-2B', 'AC-3B', 'S-1A', 'S-2A', 'S-3A', 'S-4', 'S-1B', 'S-2B', 'S-3B'],
  ...['nose-wheel', 'tail-wheel', 'pilot', 'passenger', 'baggage', 'fuel', 'previous-pack', 'schedule', 'maker'],
  ...['estimated', 'in-hand', 'waiting', 'declined'],
  ...['installed', 'relocated', 'replaced', 'in-place', 'owed', 'not-done', 'after-release', 'bus', 'protection'],
  ...['splice', 'terminal', 'switch', 'copper', 'aluminium', '14-volt', '28-volt', 'source', 'correct'],
  ...[
    'first',
    'all',
    'wrong',
    'not-fitted',
    'operative',
    'inoperative',
    'certified',
    'uncertified',
    'surveyed-base',
    'datum-compass',
  ],
  ...['satellite-track', 'before', 'after', 'satisfactory', 'unsatisfactory', 'rectified'],
  ...['vibration', 'track-split'],
  ...['not-applicable', 'life-limit', 'recommendation', 'watch', 'monitor', 'release-certificate'],
  ...['conformity-certificate', 'maker-statement', 'owner-declaration', 'standard-part'],
  ...['left', 'right', 'centre', 'drained-to-unusable', 'dry'],
  ...['end-of-drawing', 'mass', 'arm', 'flight-manual', 'workshop', 'locker', 'ballast', 'external', 'water'],
  ...['off', 'on', 'take-off-mass', 'occupants', 'front-occupant', 'updated', 'exchanged'],
  ...LANGUAGES,
];

/** Code and templates in which messages are named. */
const named = ['worker', 'site', 'templates']
  .flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' }).map((path) => `${folder}/${path}`),
  )
  .filter((path) => /\.(?:ts|hbs)$/.test(path) && !/(^|\/)(?:generated|dist|node_modules)\//.test(path))
  .map((path) => readFileSync(join(ROOT, path), 'utf8'))
  .join('\n');

const english = readCatalogue(FOLDER, 'en');

test('every message is named somewhere, and every fault of a file', () => {
  const ids = new Set(
    [...named.matchAll(/\bm\.(\w+)|\{t "(\w+)"/g)].map(([, inCode, inTemplate]) => inCode ?? inTemplate),
  );
  expect(Object.keys(english.messages).filter((id) => !ids.has(id))).toEqual([]);
  const faults = new Set([...named.matchAll(/\bfault\(\s*'([\w-]+)'/g)].map(([, id]) => id));
  expect(Object.keys(english.faults).filter((id) => !faults.has(id))).toEqual([]);
});

test('every choice of the schema that is printed is a term', () => {
  expect(offeredChoices().filter((choice) => !UNPRINTED.includes(choice) && !(choice in english.terms))).toEqual([]);
});

describe.each(LANGUAGES)('the catalogue of %s', (language) => {
  const { messages, terms, faults, fields } = readCatalogue(FOLDER, language);
  const texts = [
    ...Object.values({ ...messages, ...terms, ...faults }),
    ...Object.values(fields).flatMap(({ title, help }) => [title, help]),
  ];

  // The build refuses a language that lacks a message or takes other values in one.
  test('has every message of English', () => {
    expect(Object.keys(messages).sort()).toEqual(Object.keys(english.messages).sort());
    expect(Object.keys(terms).sort()).toEqual(Object.keys(english.terms).sort());
    expect(Object.keys(faults).sort()).toEqual(Object.keys(english.faults).sort());
    expect(Object.keys(fields).sort()).toEqual(Object.keys(english.fields).sort());
  });

  test('can be printed', () => expect(texts.flatMap(unprintableIn)).toEqual([]));

  test('has no mark-up, since templates put it into HTML as it is', () => {
    expect(texts.filter((text) => /[<>&"]/.test(text))).toEqual([]);
  });

  test('says of every field what to enter, in three words or more that do not repeat its title', () => {
    const thin = Object.entries(fields).filter(
      ([, { title, help }]) => help.trim().split(/\s+/).length < 3 || help.toLowerCase() === title.toLowerCase(),
    );
    expect(thin).toEqual([]);
  });
});
