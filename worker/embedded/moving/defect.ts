/** Something in a folder that is not as it was exported. */
export interface FolderDefect {
  /** `unproved` where a seal cannot be held against the keys that were given; everything else is `altered`. */
  kind: 'altered' | 'unproved';
  /** File of the folder, with slashes. */
  path: string;
  what: string;
}

export const altered = (path: string, what: string): FolderDefect => ({ kind: 'altered', path, what });
