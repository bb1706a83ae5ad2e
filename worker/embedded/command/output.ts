/** Where a command says what it has to say. */
export interface Output {
  /** A line for people; nothing where a machine reads. */
  say(line: string): void;
  /** The whole outcome for machines; nothing where people read. */
  result(value: unknown): void;
  /** What it is busy with. */
  progress(line: string): void;
  /** What went wrong, for people. */
  complain(line: string): void;
}

export interface OutputOptions {
  isJson: boolean;
  /** Also where nobody watches a terminal. */
  hasProgress: boolean;
}

/** Outcomes go to standard output, everything said on the way to standard error. */
export function outputFor({ isJson, hasProgress }: OutputOptions): Output {
  return {
    say(line) {
      if (!isJson) console.log(line);
    },
    result(value) {
      if (isJson) console.log(JSON.stringify(value, null, 2));
    },
    progress(line) {
      if (hasProgress || process.stderr.isTTY) console.error(line);
    },
    complain: (line) => console.error(line),
  };
}
