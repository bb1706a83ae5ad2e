// npm start: the whole service on local storage, with the demo in it.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { bundle } from './bundle.ts';
import { harmless } from './command/output.ts';
import { pdfOf, putDemo } from './demo.ts';
import { startEmbedded } from './embedded.ts';
import { freePort } from './free-port.ts';
import { takeLock } from './lock.ts';
import { type Memory, recall, remember } from './memory.ts';
import { OUT, ROOT, STORAGE } from './places.ts';

const WANTED_PORT = 8787;

async function start(): Promise<void> {
  const memory = recall(STORAGE);
  if (!(await takeLock(STORAGE))) throw new Error('Cannot start: Slipmark runs already on this storage; stop it first');
  const port = await freePort(WANTED_PORT);
  if (port !== WANTED_PORT) console.log(`Port ${WANTED_PORT} is taken; using ${port}.`);
  const { adminSecret, sealSecret } = memory;
  const service = await startEmbedded({ script: await bundle(), storage: STORAGE, port, adminSecret, sealSecret });
  const stop = () => void service.stop().then(() => process.exit(0));
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  const demo = await putDemo(service.origin, memory, (kept: Memory) => remember(STORAGE, kept));
  mkdirSync(OUT, { recursive: true });
  const file = join(OUT, `${demo.pack}-release-pack.pdf`);
  writeFileSync(file, await pdfOf(service.origin, demo));
  const { origin } = service;
  console.log(`Documentation  ${origin}/`);
  console.log(`Owner's link   ${origin}${demo.ownerPath}`);
  console.log(`Pack (PDF)     ${relative(ROOT, file)}`);
  console.log(`Key            ${demo.key}`);
  console.log(`Try            curl -H 'Authorization: Bearer ${demo.key}' ${origin}/v1/packs/${demo.pack}`);
}

start().catch((error: unknown) => {
  console.error(harmless(error instanceof Error ? error.message : String(error)));
  process.exit(1);
});
