import { randomBytes } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';
import { syncFile } from './sync-file.ts';

/** Memory of the embedded service between starts, in its storage. It has secrets, so only its user may read it. */
const Memory = z.object({
  adminSecret: z.string(),
  sealSecret: z.string(),
  /** Key of the demo workshop, once it has been created. */
  key: z.string().optional(),
  /** Path of the owner's link to the demo pack, once it has been made. */
  ownerPath: z.string().optional(),
  pack: z.string().optional(),
});
export type Memory = z.infer<typeof Memory>;

const newSecret = (): string => randomBytes(32).toString('base64url');

const fileIn = (storage: string): string => join(storage, 'memory.json');

/**
 * Reads the memory; creates new secrets if it is missing. Called with the lock of the storage taken.
 *
 * @throws Error if the file is damaged: it has the only copy of the secret that seal keys are encrypted with
 */
export function recall(storage: string): Memory {
  const file = fileIn(storage);
  if (!existsSync(file)) {
    const memory = { adminSecret: newSecret(), sealSecret: newSecret() };
    remember(storage, memory);
    return memory;
  }
  const kept = Memory.safeParse(parsed(readFileSync(file, 'utf8')));
  if (kept.success) return kept.data;
  throw new Error(
    `Cannot start: ${file} is damaged, and it holds the secret that packs are sealed under. Put a copy of it back; without one, move it away: a new secret is made, and packs are sealed with a new key`,
  );
}

/** Writes the memory, if it changed: all of it or nothing, even after a crash. */
export function remember(storage: string, memory: Memory): void {
  const file = fileIn(storage);
  const text = `${JSON.stringify(memory, null, 2)}\n`;
  if (existsSync(file) && readFileSync(file, 'utf8') === text) return;
  mkdirSync(storage, { recursive: true, mode: 0o700 });
  const beside = `${file}.new`;
  rmSync(beside, { force: true });
  const descriptor = openSync(beside, 'wx', 0o600);
  try {
    writeSync(descriptor, text);
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
  renameSync(beside, file);
  syncFile(storage);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
