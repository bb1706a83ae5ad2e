import fc from 'fast-check';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import { patched } from '../../json-patch.ts';

/** Text that has broken some program or other, as somebody might type, paste or post it. */
const HOSTILE = [
  '</p></article><script>alert(1)</script>',
  '&lt;b&gt; &amp;amp; &#0; <!-- --> ]]>',
  '{{constructor}} {{{__proto__}}} %s %n',
  '__proto__',
  'constructor',
  'toString',
  '../../etc/passwd\\',
  '((\\)) \\( \\\\ )>> endobj endstream',
  "'; DROP TABLE packs; --",
  '\u202eright to left\u202c \u2066isolated\u2069 \u200f',
  '\u0645\u0631\u062d\u0628\u0627 \u05e9\u05dc\u05d5\u05dd',
  '\u4f60\u597d \u3053\u3093\u306b\u3061\u306f \ud55c\uad6d\uc5b4',
  '\u{1F468}\u200d\u{1F469}\u200d\u{1F467} \u{1F1E6}\u{1F1FA} \u2764\ufe0f',
  `e${'\u0301'.repeat(30)} Z\u0351\u036b`,
  '\ud83d half \udc00',
  'bell\u0007 null\0 escape\u001b[31m delete\u007f',
  '\ufeff\ufffe\uffff\u2028\u2029\u0085',
  '\u00a0\u00a0 \u2003 \u3000 \u200b\u00ad',
  'one\ntwo\r\nthree\t\tfour',
  'W'.repeat(300),
  '-'.repeat(300),
  `${'a/'.repeat(100)}b`,
  '1e309 NaN -0 Infinity',
  '\ue000\uf8ff \u{10ffff}',
] as const;

export const hostileText: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(...HOSTILE),
  fc.tuple(fc.constantFrom(...HOSTILE), fc.constantFrom(...HOSTILE)).map((texts) => texts.join(' ')),
  fc.string({ unit: 'binary', maxLength: 60 }),
);

function leaves(value: unknown, at: string): string[] {
  if (typeof value === 'string') return [at];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, entry]) => leaves(entry, `${at}/${key}`));
}

const kindOf = (path: string): string => path.replace(/\/\d+/g, '/*');

const LENGTHS = [2000, 400, 200, 60, 20, 8];

/** A text of a record that may say anything, and how much of it, so far as the schema is concerned. */
export interface FreeText {
  path: string;
  most: number;
}

/** Every text of a record that is neither a date nor a choice nor of a set form. */
export function freeTexts(record: unknown): FreeText[] {
  const most = new Map<string, number>();
  const accepts = (path: string, value: string): boolean =>
    readRecord(patched(record, [{ op: 'replace', path, value }])).ok;
  return leaves(record, '').flatMap((path) => {
    const kind = kindOf(path);
    const known =
      most.get(kind) ?? LENGTHS.find((length) => accepts(path, '<a>&"'.repeat(length).slice(0, length))) ?? 0;
    most.set(kind, known);
    return known > 0 ? [{ path, most: known }] : [];
  });
}

/** The record with texts in place of others, each cut to what its field holds. */
export function withTexts(record: unknown, texts: readonly (readonly [field: FreeText, text: string])[]): unknown {
  const operations = texts.map(([{ path, most }, value]) => ({
    op: 'replace' as const,
    path,
    value: value.slice(0, most),
  }));
  return patched(record, operations);
}

/** The same, without the texts that the schema refuses. */
export function withAcceptedTexts(
  record: unknown,
  texts: readonly (readonly [field: FreeText, text: string])[],
): unknown {
  const changed = withTexts(record, texts);
  const read = readRecord(changed);
  if (read.ok) return changed;
  const refused = new Set(read.issues.map(({ pointer }) => pointer));
  return withTexts(
    record,
    texts.filter(([{ path }]) => !refused.has(path)),
  );
}
