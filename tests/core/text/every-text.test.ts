import { parseFragment } from 'parse5';
import { describe, expect, test } from 'vitest';
import { packContext } from '../../../worker/core/pack/context.ts';
import { packDocuments } from '../../../worker/core/pack/pack-documents.ts';
import { UNREAD_FIGURES } from '../../../worker/core/pack/unread-figures.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { assessed, posted } from '../pack/fixture.ts';
import { markingLocale, unmarked } from './marking.ts';
import { offeredChoices } from './offered-choices.ts';

interface Node {
  nodeName: string;
  value?: string;
  attrs?: { name: string; value: string }[];
  childNodes?: Node[];
}

/** Everything in a document that a reader can meet: texts, and attributes that are read out loud. */
function readable(node: Node): string[] {
  const own = node.nodeName === '#text' ? [node.value ?? ''] : [];
  const spoken = (node.attrs ?? [])
    .filter(({ name }) => ['alt', 'aria-label'].includes(name))
    .map(({ value }) => value);
  return [...own, ...spoken, ...(node.childNodes ?? []).flatMap(readable)];
}

/** Every string under a value. */
function strings(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(strings) : [];
}

/** Choices that are names, printed in every language as they are. */
const NAMES = [
  'AC-1A',
  'AC-2A',
  'AC-1B',
  'AC-2B',
  'AC-3B',
  'S-1A',
  'S-2A',
  'S-3A',
  'S-4',
  'S-1B',
  'S-2B',
  'S-3B',
  'EUR',
];
const CHOICES = new Set(offeredChoices().filter((choice) => !NAMES.includes(choice)));

/** Codes of findings, by which they are looked up; a record may have a part of one as a text. */
const CODE = /\b[A-Z]+(_[A-Z0-9]+)+\b/g;

/** What may stand in a pack of any language untranslated, each with its reason. */
const ALLOWED: readonly [RegExp, string][] = [
  [/\b[0-9a-f]{40,}\b/g, 'digests'],
  [/SLIPMARK-[\w.-]+|slipmark-[\w.-]+/g, 'the rule set'],
  [
    /(?<![\p{L}])(?:kg|lb|mm|cm|m|in|l|A|V|W|h|min|ft|hPa|dB|dBW|dBm|MHz|km\/h|mph|N·m|in·lbf|ft·lbf|in\/s|Ah|bar|rpm|Hz|kt|km|US|gal|imp|UTC|MAC|Al|A·min|kg·mm|lb·in|°C|R|O|B|C|D|E)(?![\p{L}])/gu,
    'units and letters of formulae',
  ],
  [/\bWMM-?\d+\b/g, 'the name of the magnetic model'],
];

/** Longest first, so that no text is cut out of the middle of another. */
function without(text: string, known: readonly string[]): string {
  return known.reduce((rest, entry) => rest.replaceAll(entry, ' '), text);
}

/** Texts of the fixture records that read like a choice of the schema: serial numbers, a bus, the identifiers of two devices. */
const OWN = ['none', 'avionics', 'transponder', 'conspicuity'].map((word) => new RegExp(`^[a-z0-9-]+: ${word}$`));

const VISITS = Object.entries(RELEASABLE_AT);

describe.each(VISITS)('every text in the pack of %s', (name, at) => {
  test('comes from the record, the regime or a catalogue', async () => {
    const record = posted(name);
    const assessment = await assessed(record, at);
    const identity = {
      pack: 'P',
      issue: '1',
      issuedAt: at,
      visit: 'v',
      previous: undefined,
      supersedes: undefined,
      sealedBy: undefined,
    };
    const context = packContext(assessment, {
      of: identity,
      recordSha256: assessment.recordSha256,
      locale: markingLocale(),
    });
    const { documents } = await packDocuments(context);
    const { regime, findings } = assessment;
    const known = [
      ...strings(record),
      ...strings(regime),
      ...UNREAD_FIGURES.map(({ source }) => source),
      ...findings.flatMap(({ sentence, remedy }) => [sentence, remedy]),
      ...documents.map(({ id }) => id),
    ]
      .filter((text) => /\p{L}/u.test(text) && !CHOICES.has(text))
      .sort((a, b) => b.length - a.length);
    const left = documents.flatMap(({ id, html }) =>
      readable(parseFragment(html) as unknown as Node)
        .map((text) => without(unmarked(text).replace(CODE, ' '), known))
        .map((text) => ALLOWED.reduce((rest, [pattern]) => rest.replace(pattern, ' '), text))
        .filter((text) => /\p{L}{2,}/u.test(text))

        .map((text) => `${id}: ${text.trim()}`)
        .filter((text) => !OWN.some((own) => own.test(text))),
    );
    expect(left).toEqual([]);
  });
});
