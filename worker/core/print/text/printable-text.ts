import { normaliseText, unprintableIn } from '../../text/printable.ts';
import type { PrintFinding } from '../print-job.ts';

const STAND_IN = '□';

/** Replaces every character that the fonts lack by an empty box, so that nothing is left out unseen, and reports it. */
export function printableText(text: string, documentId: string, report: (finding: PrintFinding) => void): string {
  if (isPlain(text)) return text;
  const normal = normaliseText(text);
  const characters = unprintableIn(normal);
  if (characters.length === 0) return normal;
  const missing = new Set(characters);
  const printed = [...normal].map((character) => (missing.has(character) ? STAND_IN : character)).join('');
  const at = Math.max(0, printed.indexOf(STAND_IN) - 30);
  report({ code: 'TEXT_UNPRINTABLE', documentId, characters, context: printed.slice(at, at + 60).trim() });
  return printed;
}

// Fast path: most text is plain ASCII.
function isPlain(text: string): boolean {
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code > 0x7e || (code < 0x20 && code !== 0x0a)) return false;
  }
  return true;
}
