import { closeSync, fsyncSync, openSync } from 'node:fs';

/** Flushes a file, or the names in a folder. */
export function syncFile(path: string): void {
  const file = openSync(path, 'r');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
