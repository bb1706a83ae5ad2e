// Node script: node worker/words/build.ts
// Writes generated/german.ts: the catalogue under short keys, since the Worker has every English text already, in its code.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { GERMAN, KEPT } from './de/catalogue.ts';
import { keyOf } from './key-of.ts';

const keyed = new Map<string, string>();
for (const [english, german] of Object.entries(GERMAN)) {
  const key = keyOf(english);
  if (keyed.has(key)) throw new Error(`Cannot build the catalogue: “${english}” has the key of another text, ${key}`);
  keyed.set(key, german);
}

const folder = join(import.meta.dirname, 'generated');
mkdirSync(folder, { recursive: true });
const lines = [...keyed].map(([key, german]) => `${key}: ${JSON.stringify(german)},`);
writeFileSync(
  join(folder, 'german.ts'),
  `export const GERMAN: Readonly<Record<string, string>> = {\n${lines.join('\n')}\n};\n\nexport const KEPT: readonly string[] = ${JSON.stringify(KEPT)};\n`,
);
