/** Change or damage in an exported folder. */
export interface FolderDefect {
  /** `unproved` if a seal cannot be checked with the given keys; everything else is `altered`. */
  kind: 'altered' | 'unproved';
  /** File of the folder, with slashes. */
  path: string;
  what: string;
}

export const altered = (path: string, what: string): FolderDefect => ({ kind: 'altered', path, what });

const MAX_SAID = 20;

/** Error of an operation that needs a folder without defects; `lines` names the first of them. */
export class DefectsError extends Error {
  readonly lines: readonly string[];

  /** @param before start of the message, up to the count: what cannot be done */
  constructor(before: string, defects: readonly FolderDefect[]) {
    const named = defects.slice(0, MAX_SAID).map(({ path, what }) => `  ${path} ${what}`);
    const lines = [`${before} ${defects.length} defects`, ...named];
    super(lines.join('\n'));
    this.lines = lines;
  }
}
