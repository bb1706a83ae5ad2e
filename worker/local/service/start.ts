// npm start: the whole service on local storage, with the demo in it.

import { harmless } from '../command/output.ts';
import { bundle } from './bundle.ts';
import { OUT, STORAGE } from './places.ts';
import { serveDemo } from './serve-demo.ts';

const WANTED_PORT = 8787;

async function start(): Promise<void> {
  const tell = (line: string): void => console.log(harmless(line));
  const script = await bundle();
  const service = await serveDemo({ script, storage: STORAGE, out: OUT, wantedPort: WANTED_PORT, tell });
  const stop = () => void service.stop().then(() => process.exit(0));
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
}

start().catch((error: unknown) => {
  console.error(harmless(error instanceof Error ? error.message : String(error)));
  process.exit(1);
});
