import { printParseErrorCode, visit } from 'jsonc-parser';

// `JSON.parse` runs first, because it is fast; V8 gives the position of an error in prose only. jsonc-parser gives
// it as an offset, and runs only after a failure.

/** Position at which a text stops being JSON, from 1. */
export interface JsonFault {
  what: string;
  at: { line: number; column: number };
}

/**
 * Stops the parser at the first fault: after it, brackets do not match, and the parser would follow them without bound.
 */
class FaultFound extends Error {}

/**
 * Returns the first fault of a text that is not JSON.
 *
 * @param text nested no deeper than `structuralDefects` allows: the parser is recursive
 */
export function jsonFault(text: string): JsonFault {
  const lines = text.split('\n');
  let found = { what: 'end of text', at: { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 } };
  const onError = (error: number, _offset: number, _length: number, line: number, character: number) => {
    found = { what: printParseErrorCode(error as never), at: { line: line + 1, column: character + 1 } };
    throw new FaultFound();
  };
  try {
    visit(text, { onError }, { disallowComments: true, allowTrailingComma: false });
  } catch (error) {
    if (!(error instanceof FaultFound)) throw error;
  }
  return found;
}
