import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, sep } from 'node:path';
import { canonicalJson } from '../../core/pack/canonical-json.ts';
import { PLACES } from './format.ts';

/** Folder that is being written. Paths have slashes. */
export interface NewFolder {
  /**
   * Writes a file.
   *
   * @throws Error if the file already exists
   */
  write(path: string, content: string | Uint8Array): void;
  has(path: string): boolean;
  /** Writes the list of digests, as the last file: a folder without it is incomplete. */
  finish(): number;
}

export const digestOf = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex');

/**
 * Creates a folder.
 *
 * @throws Error if there is anything in the folder
 */
export function newFolder(folder: string): NewFolder {
  if (existsSync(folder) && readdirSync(folder).length > 0)
    throw new Error(`Cannot export: ${folder} must be empty or not exist`);
  const sums = new Map<string, string>();
  const place = (path: string, content: string | Uint8Array): void => {
    const file = join(folder, path);
    mkdirSync(dirname(file), { recursive: true });
    // Names that differ in case only are the same on some machines: better no export than half of one.
    writeFileSync(file, content, { flag: 'wx' });
  };
  return {
    write(path, content) {
      place(path, content);
      sums.set(path, digestOf(content));
    },
    has: (path) => sums.has(path),
    finish() {
      place(PLACES.sums, sumsText(sums));
      return sums.size;
    },
  };
}

/** Returns the digests in the format of `sha256sum -c`, in order of path. */
function sumsText(sums: ReadonlyMap<string, string>): string {
  const paths = [...sums.keys()].sort();
  return paths.map((path) => `${sums.get(path)}  ${path}\n`).join('');
}

/** Parses the list of digests, by path; undefined if a line is invalid. */
export function readSums(text: string): Map<string, string> | undefined {
  const lines = text.split('\n').filter((line) => line !== '');
  const sums = new Map<string, string>();
  for (const line of lines) {
    const [, digest, path] = /^([0-9a-f]{64}) {2}(\S+)$/.exec(line) ?? [];
    if (digest === undefined || path === undefined) return undefined;
    sums.set(path, digest);
  }
  return sums;
}

/** Returns every file in a folder, with slashes, in order. */
export function filesUnder(folder: string): string[] {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return paths
    .filter((path) => !statSync(join(folder, path)).isDirectory())
    .map((path) => path.split(sep).join('/'))
    .sort();
}

export const bytesAt = (folder: string, path: string): Uint8Array => new Uint8Array(readFileSync(join(folder, path)));

export const textAt = (folder: string, path: string): string => readFileSync(join(folder, path), 'utf8');

/** Returns JSON for people, in one form: keys sorted, two spaces. */
export const jsonText = (value: unknown): string => `${JSON.stringify(JSON.parse(canonicalJson(value)), null, 2)}\n`;
