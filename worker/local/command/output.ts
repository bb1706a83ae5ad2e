/** Where a command says what it has to say. Whatever is in a line, it cannot move the cursor, colour the screen or turn text round. */
export interface Output {
  /** Lines for people; nothing where a machine reads. */
  say(...lines: readonly string[]): void;
  /** The whole outcome for machines; nothing where people read. */
  result(value: unknown): void;
  /** What it is busy with. */
  progress(line: string): void;
  /** What went wrong, for people. */
  complain(...lines: readonly string[]): void;
  /** A file that goes to standard output: as it is, but to a terminal only what is harmless there. */
  file(text: string): void;
}

export interface OutputOptions {
  isJson: boolean;
  /** Also where nobody watches a terminal. */
  hasProgress: boolean;
}

// Controls (C0, DEL, C1), what ends a line for some readers, and what turns the direction of text (Unicode, UAX 9): marks, embeddings,
// overrides and isolates.
const HARMFUL = /[\p{Cc}\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

const figures = (character: string): string => character.charCodeAt(0).toString(16).padStart(4, '0');

/**
 * One line of text that comes from anywhere, fit for a terminal: what a terminal obeys is shown by its code point.
 *
 * @example harmless('a\u001b[2J')  // 'aU+001B[2J'
 */
export function harmless(line: string): string {
  return line.replace(HARMFUL, (character) => `U+${figures(character).toUpperCase()}`);
}

// JSON has no such character outside its strings, but for the line feeds that it is laid out with.
function harmlessJson(value: unknown): string {
  return JSON.stringify(value, null, 2).replace(HARMFUL, (character) =>
    character === '\n' ? character : `\\u${figures(character)}`,
  );
}

const LAID_OUT = /(\r?\n|\t)/;

/** Outcomes go to standard output, everything said on the way to standard error. */
export function outputFor({ isJson, hasProgress }: OutputOptions): Output {
  return {
    say(...lines) {
      if (!isJson) for (const line of lines) console.log(harmless(line));
    },
    result(value) {
      if (isJson) console.log(harmlessJson(value));
    },
    progress(line) {
      if (hasProgress || process.stderr.isTTY) console.error(harmless(line));
    },
    complain(...lines) {
      for (const line of lines) console.error(harmless(line));
    },
    file(text) {
      const parts = process.stdout.isTTY ? text.split(LAID_OUT) : [text];
      process.stdout.write(
        parts.map((part, i) => (i % 2 === 1 || parts.length === 1 ? part : harmless(part))).join(''),
      );
    },
  };
}
