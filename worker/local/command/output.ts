/** Output of a command. No line can move the cursor, colour the screen or reverse text. */
export interface Output {
  /** Prints lines for people; nothing in JSON mode. */
  say(...lines: readonly string[]): void;
  /** Prints the whole result for machines; nothing in text mode. */
  result(value: unknown): void;
  /** Prints the current step. */
  progress(line: string): void;
  /** Prints errors for people. */
  complain(...lines: readonly string[]): void;
  /** Prints a file to standard output: unchanged, but to a terminal only harmless characters. */
  file(text: string): void;
}

export interface OutputOptions {
  isJson: boolean;
  /** Shows progress even without a terminal. */
  hasProgress: boolean;
}

// Control characters (C0, DEL, C1), characters that some readers take for line ends, and those that change the
// direction of text (Unicode, UAX 9): marks, embeddings, overrides and isolates.
const HARMFUL = /[\p{Cc}\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

const figures = (character: string): string => character.charCodeAt(0).toString(16).padStart(4, '0');

/**
 * Makes a line of any text harmless for a terminal: control characters are shown by their code points.
 *
 * @example harmless('a\u001b[2J')  // 'aU+001B[2J'
 */
export function harmless(line: string): string {
  return line.replace(HARMFUL, (character) => `U+${figures(character).toUpperCase()}`);
}

// JSON has no such character outside its strings, except the line feeds of its layout.
function harmlessJson(value: unknown): string {
  return JSON.stringify(value, null, 2).replace(HARMFUL, (character) =>
    character === '\n' ? character : `\\u${figures(character)}`,
  );
}

const LAID_OUT = /(\r?\n|\t)/;

/** Returns the output: results go to standard output, everything else to standard error. */
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
