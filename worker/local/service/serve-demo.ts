import { mkdirSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { pdfOf, putDemo } from './demo.ts';
import { type Embedded, startOnceHeld } from './embedded.ts';
import { freePort } from './free-port.ts';
import { type Memory, recall, remember } from './memory.ts';
import { ROOT } from './places.ts';

export interface DemoOptions {
  /** Path of the bundled Worker. */
  script: string;
  storage: string;
  /** Folder in which the pack of the demo is saved. */
  out: string;
  /** First port that is tried. */
  wantedPort: number;
  /** Receives each line for the user of the machine. */
  tell: (line: string) => void;
}

/** Serves a storage folder, with the demo in it. If the demo fails, the service and its data are still available. */
export async function serveDemo({ script, storage, out, wantedPort, tell }: DemoOptions): Promise<Embedded> {
  const port = await freePort(wantedPort);
  const service = await startOnceHeld({ script, storage, port, tell }, () => recall(storage));
  if (port !== wantedPort) tell(`Port ${wantedPort} is taken; using ${port}.`);
  tell(`Documentation  ${service.origin}/`);
  try {
    await showDemo(service.origin, { storage, out, tell });
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error);
    tell(`The demo cannot be shown; the service runs without it. ${said}`);
  }
  return service;
}

async function showDemo(
  origin: string,
  { storage, out, tell }: Pick<DemoOptions, 'storage' | 'out' | 'tell'>,
): Promise<void> {
  const demo = await putDemo(origin, recall(storage), (kept: Memory) => remember(storage, kept));
  mkdirSync(out, { recursive: true });
  const file = join(out, `${demo.pack}-release-pack.pdf`);
  writeFileSync(file, await pdfOf(origin, demo));
  tell(`Owner's link   ${origin}${demo.ownerPath}`);
  tell(`Pack (PDF)     ${relative(ROOT, file)}`);
  tell(`Key            ${demo.key}`);
  tell(`Try            curl -H 'Authorization: Bearer ${demo.key}' ${origin}/v1/packs/${demo.pack}`);
}
