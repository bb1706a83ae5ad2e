import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { digestOf } from '../backup/folder.ts';
import { FileError } from './command.ts';
import { bytesOf } from './read-file.ts';

export interface NamedFile {
  name: string;
  bytes: Uint8Array<ArrayBuffer>;
}

/** Returns the files of a folder by their SHA-256, as records name them. */
export function filesByDigest(folder: string): ReadonlyMap<string, NamedFile> {
  const named = namesIn(folder).map((name) => {
    const bytes = bytesOf(join(folder, name));
    return [digestOf(bytes), { name, bytes }] as const;
  });
  return new Map(named);
}

function namesIn(folder: string): string[] {
  try {
    const entries = readdirSync(folder, { withFileTypes: true });
    return entries.flatMap((entry) => (entry.isFile() ? [entry.name] : [])).sort();
  } catch {
    throw new FileError(`Cannot read ${folder}: there is no such folder`);
  }
}
