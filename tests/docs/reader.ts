import { execFile } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { bundle } from '../../worker/local/service/bundle.ts';
import { type Embedded, startEmbedded } from '../../worker/local/service/embedded.ts';
import { exampleVisit } from '../../worker/local/service/example-visit.ts';
import { freePort } from '../../worker/local/service/free-port.ts';
import { ROOT } from '../../worker/local/service/places.ts';
import { fencedBlocks } from './fenced-blocks.ts';
import { runPython } from './run-python.ts';
import { SHELL } from './shell.ts';

const WRITTEN_ORIGIN = 'http://127.0.0.1:8787';
/** Where the page on moving house writes that the new deployment is. */
const WRITTEN_NEW_ORIGIN = 'http://127.0.0.1:8788';
const ADMIN_SECRET = 'secret-of-the-commands-test';

/** Somebody who reads the documentation beside two running services, and does what it says. */
export interface Reader {
  /** Where the reader stands: it has the records and files that the pages name, as if their visits had ended yesterday. */
  folder: string;
  newOrigin: string;
  /** Runs every shell block of a page in one shell; a call that is refused ends it. */
  runShell(page: string): Promise<string>;
  runTypeScript(page: string): Promise<string>;
  runPython(page: string): Promise<string>;
  /** Pages and languages of what was run, as `guide sh`. */
  hasRun: ReadonlySet<string>;
  leave(): Promise<void>;
}

export async function beginReading(): Promise<Reader> {
  const storage = mkdtempSync(join(tmpdir(), 'slipmark-'));
  const folder = join(storage, 'reader');
  const script = await bundle();
  const service = await started(script, storage, 'service', 18_987);
  const newDeployment = await started(script, storage, 'new', 19_487);
  furnish(folder);
  const env = { ...process.env, ADMIN: ADMIN_SECRET, ...(await keyOf(service)) };
  const hasRun = new Set<string>();
  const code = (page: string, language: string): string => {
    hasRun.add(`${page} ${language}`);
    return fencedBlocks(page, language)
      .join('\n')
      .replaceAll(WRITTEN_ORIGIN, service.origin)
      .replaceAll(WRITTEN_NEW_ORIGIN, newDeployment.origin);
  };
  const run = async (file: string, args: readonly string[]): Promise<string> =>
    (await promisify(execFile)(file, args, { cwd: folder, env })).stdout;
  return {
    folder,
    hasRun,
    newOrigin: newDeployment.origin,
    runShell: (page) =>
      run('bash', [
        '-euo',
        'pipefail',
        '-c',
        `${SHELL}
${code(page, 'sh')}`,
      ]),
    runTypeScript(page) {
      writeFileSync(join(folder, `${page}.ts`), code(page, 'ts'));
      return run(process.execPath, [`${page}.ts`]);
    },
    runPython: (page) => runPython(code(page, 'python'), folder, env),
    async leave() {
      await service.stop();
      await newDeployment.stop();
      rmSync(storage, { recursive: true, force: true });
    },
  };
}

async function started(script: string, storage: string, name: string, port: number): Promise<Embedded> {
  const secrets = { adminSecret: ADMIN_SECRET, sealSecret: `seal-secret-of-the-${name}` };
  return startEmbedded({ script, storage: join(storage, name), port: await freePort(port), ...secrets });
}

function furnish(folder: string): void {
  mkdirSync(join(folder, 'fixtures/visits'), { recursive: true });
  cpSync(join(ROOT, 'fixtures/attachments'), join(folder, 'fixtures/attachments'), { recursive: true });
  const visit = exampleVisit('weighing-only', new Date());
  writeFileSync(join(folder, 'fixtures/visits/weighing-only.json'), JSON.stringify(visit));
  symlinkSync(join(ROOT, 'worker'), join(folder, 'worker'));
}

/** The key of a new workshop, by the names that the pages give it. */
async function keyOf({ origin }: Embedded): Promise<{ KEY: string; SLIPMARK_KEY: string }> {
  const answer = await fetch(`${origin}/v1/workshops`, {
    method: 'POST',
    headers: { Authorization: `Bearer ${ADMIN_SECRET}`, 'Content-Type': 'application/json' },
    body: JSON.stringify({ id: 'reader', name: 'A reader of the documentation' }),
  });
  const { key } = (await answer.json()) as { key: { secret: string } };
  return { KEY: key.secret, SLIPMARK_KEY: key.secret };
}
