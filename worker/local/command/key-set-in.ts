import type { JSONWebKeySet } from 'jose';
import { isKeySet } from '../../core/seal/verify.ts';
import { FileError } from './command.ts';
import { textOf } from './read-file.ts';

/** Reads a file of published keys. @throws FileError if it is not a set of keys */
export function keySetIn(file: string): JSONWebKeySet {
  try {
    const set: unknown = JSON.parse(textOf(file));
    if (isKeySet(set)) return set;
  } catch (error) {
    if (error instanceof FileError) throw error;
    throw new FileError(`Cannot read ${file}: not valid JSON`);
  }
  throw new FileError(`Cannot read ${file}: not a set of keys (RFC 7517), the list "keys" is missing`);
}
