import type { Visit } from '../record/visit.ts';
import { DASH } from '../text/dash.ts';
import type { Formatter } from '../text/formatter.ts';
import type { Statement } from './regimes/regime.ts';

/** Returns the sentence of a statement as printed above the signature, in the language of the formatter. */
export function statementText({ wording }: Statement, { inspection }: Visit, fmt: Formatter): string {
  return fmt.text(wording, { inspection: inspection?.kind ?? DASH });
}
