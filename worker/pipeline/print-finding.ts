import type { Finding } from '../gate/finding.ts';
import type { PrintFinding } from '../print/index.ts';
import type { Printer } from '../units/print.ts';

/** What the typesetter could not print, as a finding that blocks: nothing is left out in silence. */
export function printFinding(finding: PrintFinding, say: Printer): Finding {
  const common = { severity: 'blocks', pointer: '', source: 'common practice, no source' } as const;
  if (finding.code === 'TEXT_UNPRINTABLE') {
    return {
      ...common,
      code: finding.code,
      sentence: say.words`Document ${finding.documentId} has characters that cannot be printed: ${finding.characters.join(' ')}, near “${finding.context}”`,
      remedy: say.words`Write it in Latin letters and the signs listed in the guide`,
      data: { document: finding.documentId, characters: finding.characters.join(' ') },
    };
  }
  return {
    ...common,
    code: finding.code,
    sentence: say.words`Document ${finding.documentId} has content that does not fit: ${finding.context}`,
    remedy: say.words`Shorten the text, or split it into several entries of the record`,
    data: { document: finding.documentId },
  };
}
