import { describe, expect, test } from 'vitest';
import { REGIMES } from '../../../worker/core/gate/regimes/table.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';
import { assessRecord } from '../gate/assess-record.ts';
import { type Reject, rejectedRecord } from '../gate/reject.ts';
import { markingLocale, unmarked } from './marking.ts';
import { offeredChoices } from './offered-choices.ts';

const CHOICES = new Set(offeredChoices());
/** Fields that name an entry of the record. */
const NAMING = new Set(['id', 'meter']);

/** Every text under a value that somebody wrote: not the choices of the schema, identifiers that read like one apart. */
function written(value: unknown, key = ''): string[] {
  if (typeof value === 'string') return NAMING.has(key) || !CHOICES.has(value) ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => written(part, name));
}

/** What may stand in a finding of any language untranslated, each with its reason. */
const ALLOWED: readonly [RegExp, string][] = [
  [/\b[A-Z]+(_[A-Z0-9]+)+\b/g, 'codes of findings, by which they are looked up'],
  [/\b(?=\w*\d|Q)[0-9A-Z]{4,7}\b/g, 'addresses and marks that were worked out'],
  [/\b(?:PDF|JPEG|PNG|Helvetica|Gold|UTC|WMM\d*|AWG)\b/g, 'names'],
  [/(?<!\w)\/[\w/-]*/g, 'parts of the record by their path'],
  [/U\+[0-9A-F]{4,6}/g, 'characters by their number'],
  [
    /(?<!\p{L})(?:kg|lb|US gal|imp gal|mm|cm|in|ft|hPa|dB|dBm|dBW|MHz|kt|km\/h|mph|N·m|in·lbf|ft·lbf|in\/s)(?!\p{L})/gu,
    'units',
  ],
];

const IDS = REGIMES.flatMap(({ id, statements }) => [id, ...statements.map((statement) => statement.id)]);

/** Longest first, so that no text is cut out of the middle of another. */
function knownIn(...values: unknown[]): string[] {
  return [...written(values), ...IDS].filter((text) => /\p{L}{2}/u.test(text)).sort((a, b) => b.length - a.length);
}

describe('every text of a finding comes from the record or a catalogue', () => {
  for (const name of fixturesIn('rejects')) {
    test(name, () => {
      const reject = readFixture(`rejects/${name}`) as Reject;
      const { record, at } = rejectedRecord(reject);

      const { findings } = assessRecord(record, at, reject.facts, markingLocale());
      const { lastPack, open, people, standingSealedBy, earlierIssue } = reject.facts ?? {};
      const known = knownIn(record, lastPack, open, people, standingSealedBy, earlierIssue);
      const left = findings
        .flatMap(({ sentence, remedy }) => [sentence, remedy])
        .map((text) => known.reduce((rest, entry) => rest.replaceAll(entry, ' '), unmarked(text)))
        .map((text) => ALLOWED.reduce((rest, [pattern]) => rest.replace(pattern, ' '), text))
        .filter((text) => /\p{L}{2}/u.test(text));
      expect(left).toEqual([]);
    });
  }
});
