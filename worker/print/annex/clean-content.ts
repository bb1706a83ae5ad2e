import { joined } from '../bytes/byte-text.ts';
import { endOfInlineImage } from './inline-image.ts';
import { type Token, tokenAt } from './lexer.ts';
import { tokenText } from './token-value.ts';

/** Content without marks, and what in it matters to the claims of the file it goes into. */
export interface CleanContent {
  bytes: Uint8Array;
  usesCmyk: boolean;
  usesLzw: boolean;
  /** Operators that PDF does not define. */
  unknown: ReadonlySet<string>;
}

// ISO 32000-1, annex A.
const OPERATORS = new Set(
  'b B b* B* BDC BI BMC BT BX c cm CS cs d d0 d1 Do DP EI EMC ET EX f F f* G g gs h i ID j J K k l m M MP n q Q re RG rg ri s S SC sc SCN scn sh T* Tc Td TD Tf Tj TJ TL Tm Tr Ts Tw Tz v w W W* y \' "'.split(
    ' ',
  ),
);

// ISO 32000-1, table 320.
const MARKS = new Set(['BMC', 'BDC', 'EMC', 'MP', 'DP']);

const OPERANDS = new Set(['true', 'false', 'null']);
const LINE_FEED = Uint8Array.of(10);

/**
 * Removes the marked-content operators of a content stream with their operands, and leaves every other byte as it is. The structure that the
 * marks spoke of stays behind in the other file; left in, they would be taken for marks of ours.
 */
export function cleanContent(bytes: Uint8Array): CleanContent {
  const pieces: Uint8Array[] = [];
  const unknown = new Set<string>();
  let [usesCmyk, usesLzw, keptTo, operandsStart] = [false, false, 0, -1];
  let last: Token | null = null;
  for (let at = 0; ; ) {
    const token = tokenAt(bytes, at);
    if (token.kind === 'end') break;
    at = token.end;
    const text = token.kind === 'word' ? tokenText(bytes, token) : '';
    if (token.kind !== 'word' || OPERANDS.has(text)) {
      if (operandsStart < 0) operandsStart = token.start;
      last = token;
      continue;
    }
    if (MARKS.has(text)) {
      pieces.push(bytes.subarray(keptTo, operandsStart < 0 ? token.start : operandsStart), LINE_FEED);
      keptTo = token.end;
    } else if (text === 'BI') {
      const image = endOfInlineImage(bytes, token.end);
      usesCmyk ||= image.usesCmyk;
      usesLzw ||= image.usesLzw;
      at = image.end;
    } else if (text === 'k' || text === 'K') usesCmyk = true;
    else if ((text === 'cs' || text === 'CS') && last) usesCmyk ||= tokenText(bytes, last) === '/DeviceCMYK';
    else if (!OPERATORS.has(text)) unknown.add(text);
    operandsStart = -1;
    last = null;
  }
  return { bytes: joined([...pieces, bytes.subarray(keptTo)]), usesCmyk, usesLzw, unknown };
}
