/** Something in a folder that is not as it was exported. */
export interface FolderDefect {
  /** `unproved` where a seal cannot be held against the keys that were given; everything else is `altered`. */
  kind: 'altered' | 'unproved';
  /** File of the folder, with slashes. */
  path: string;
  what: string;
}

export const altered = (path: string, what: string): FolderDefect => ({ kind: 'altered', path, what });

const MAX_SAID = 20;

/** Ends what needs a folder without defects; `lines` names the first of them. */
export class DefectsError extends Error {
  readonly lines: readonly string[];

  /** @param before what cannot be done, up to the count */
  constructor(before: string, defects: readonly FolderDefect[]) {
    const named = defects.slice(0, MAX_SAID).map(({ path, what }) => `  ${path} ${what}`);
    const lines = [`${before} ${defects.length} defects`, ...named];
    super(lines.join('\n'));
    this.lines = lines;
  }
}
