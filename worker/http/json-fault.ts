import { printParseErrorCode, visit } from 'jsonc-parser';

/** Where a text stops being JSON, from 1. */
export interface JsonFault {
  what: string;
  at: { line: number; column: number };
}

/** The first fault of a text that is no JSON. The platform's parser is fast and says little; this one says where. */
export function jsonFault(text: string): JsonFault {
  const lines = text.split('\n');
  let found = { what: 'end of text', at: { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 } };
  let isFirst = true;
  const onError = (error: number, _offset: number, _length: number, line: number, character: number) => {
    if (isFirst) found = { what: printParseErrorCode(error as never), at: { line: line + 1, column: character + 1 } };
    isFirst = false;
  };
  visit(text, { onError }, { disallowComments: true, allowTrailingComma: false });
  return found;
}
