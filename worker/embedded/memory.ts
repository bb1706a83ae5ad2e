import { randomBytes } from 'node:crypto';
import { chmodSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';

/** What the embedded service remembers between starts, beside its storage. It holds secrets, so only its user may read it. */
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

export function recall(storage: string): Memory {
  const file = fileIn(storage);
  const kept = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {};
  const memory = Memory.parse({ adminSecret: newSecret(), sealSecret: newSecret(), ...kept });
  remember(storage, memory);
  return memory;
}

export function remember(storage: string, memory: Memory): void {
  mkdirSync(storage, { recursive: true, mode: 0o700 });
  writeFileSync(fileIn(storage), `${JSON.stringify(memory, null, 2)}\n`, { mode: 0o600 });
  chmodSync(fileIn(storage), 0o600);
}
