import type { Finding } from '../gate/finding.ts';
import { PRACTICE } from '../gate/source.ts';
import type { PrintFinding } from '../print/index.ts';
import { pointer } from '../record/pointer.ts';
import type { Formatter } from '../text/formatter.ts';
import * as m from '../text/generated/messages.ts';
import { codePointName, normaliseText, unprintableIn } from '../text/printable.ts';
import type { Assessed } from './assess.ts';

const COMMON = { severity: 'blocks', source: PRACTICE.text } as const;

function findingOf(finding: PrintFinding, at: string, fmt: Formatter): Finding {
  if (finding.code === 'TEXT_UNPRINTABLE') {
    const characters = finding.characters.map(codePointName);
    return {
      ...COMMON,
      code: finding.code,
      pointer: at,
      sentence: fmt.text(m.printFinding_documentCharactersCannotPrinted, {
        documentId: finding.documentId,
        characters: characters.join(' '),
        context: finding.context,
      }),
      remedy: fmt.text(m.writeLatinLettersSigns),
      data: { document: finding.documentId, characters: characters.join(' ') },
    };
  }
  return {
    ...COMMON,
    code: finding.code,
    pointer: at,
    sentence: fmt.text(m.printFinding_documentContentNotFit, {
      documentId: finding.documentId,
      context: finding.context,
    }),
    remedy: fmt.text(m.printFinding_remedy),
    data: { document: finding.documentId },
  };
}

// Returns every text of a record with its pointer; a record nests no deeper than its schema.
function textsIn(value: unknown, path: readonly PropertyKey[] = []): [at: string, text: string][] {
  if (typeof value === 'string') return [[pointer(...path), value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, within]) => textsIn(within, [...path, key]));
}

// A text that does not fit is identified by its start, which may be a figure with many locations: the finding then
// points at none of them.
function originsOf(finding: PrintFinding, texts: readonly [at: string, text: string][]): string[] {
  const isFrom =
    finding.code === 'CONTENT_DOES_NOT_FIT'
      ? (text: string) => normaliseText(text).includes(finding.context)
      : (text: string) => unprintableIn(text).some((character) => finding.characters.includes(character));
  const origins = texts.filter(([, text]) => isFrom(text)).map(([at]) => at);
  return origins.length === 0 || (finding.code === 'CONTENT_DOES_NOT_FIT' && origins.length > 1) ? [''] : origins;
}

/**
 * Returns texts that the typesetter could not print as blocking findings: nothing is left out silently. Each points at
 * its text of the record, if any, and is listed once for all its occurrences; findings of the assessment are not
 * repeated.
 */
export function printFindings(
  found: readonly PrintFinding[],
  { record, pointerAsPosted, findings: said }: Pick<Assessed, 'record' | 'pointerAsPosted' | 'findings'>,
  fmt: Formatter,
): Finding[] {
  if (found.length === 0) return [];
  // What is kept of the standing file is not printed.
  const { standing: _, ...printed } = record;
  const texts = textsIn(printed).map(([at, text]): [string, string] => [pointerAsPosted(at), text]);
  const known = new Set(said.map((finding) => `${finding.code} ${finding.pointer}`));
  return found.flatMap((finding) => {
    return originsOf(finding, texts).flatMap((at) => {
      const placed = findingOf(finding, at, fmt);
      const key = at === '' ? `${finding.code} ${placed.sentence}` : `${finding.code} ${at}`;
      if (known.has(key)) return [];
      known.add(key);
      return [placed];
    });
  });
}
