import { readFileSync } from 'node:fs';
import { FileError } from './command.ts';

const CAUSES: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EISDIR: 'a folder',
  EACCES: 'no permission',
};

/**
 * Reads the bytes of a file; of standard input for `-`.
 *
 * @throws FileError with the reason why it cannot be read
 */
export function bytesOf(file: string): Uint8Array<ArrayBuffer> {
  try {
    return new Uint8Array(readFileSync(file === '-' ? 0 : file));
  } catch (error) {
    const { code = '', message } = error as NodeJS.ErrnoException;
    throw new FileError(`Cannot read ${file}: ${CAUSES[code] ?? message}`);
  }
}

/** @throws FileError also if it is not UTF-8 */
export function textOf(file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytesOf(file));
  } catch (error) {
    if (error instanceof FileError) throw error;
    throw new FileError(`Cannot read ${file}: not UTF-8 (in a spreadsheet, save as “CSV UTF-8”)`);
  }
}
