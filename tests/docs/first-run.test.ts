import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, expect, test } from 'vitest';
import { ROOT } from '../../worker/local/service/places.ts';

/** What a clone does not have: it is installed, built, or kept by a service. */
const NOT_CLONED = new Set(['.git', 'node_modules', 'dist', 'generated', '.slipmark', '.wrangler', 'out']);

const folder = mkdtempSync(join(tmpdir(), 'slipmark-'));
let service: ChildProcess | undefined;

afterAll(async () => {
  const ended = new Promise((resolve) => service?.once('close', resolve) ?? resolve(undefined));
  if (service?.pid !== undefined) process.kill(-service.pid);
  await ended;
  rmSync(folder, { recursive: true, force: true });
});

/** The commands by which the README leads to a pack of one’s own. */
function writtenCommands(): string[] {
  const [, block = ''] =
    /## Your first visit\n+```sh\n(.*?)```/s.exec(readFileSync(join(ROOT, 'README.md'), 'utf8')) ?? [];
  return block.split('\n').flatMap((line) => line.replace(/\s+#.*$/, '') || []);
}

/** Somebody at an editor, who enters another aircraft. */
const EDITOR = `import { readFileSync, writeFileSync } from 'node:fs';
const record = JSON.parse(readFileSync(process.argv[2], 'utf8'));
record.aircraft.serial = 'MINE-1';
writeFileSync(process.argv[2], JSON.stringify(record, null, 2));`;

/** Starts the service as the README says, and waits until it has said everything. */
function started(command: string): Promise<{ origin: string; key: string }> {
  const child = spawn('bash', ['-c', command], { cwd: folder, detached: true });
  service = child;
  let said = '';
  return new Promise((resolve, reject) => {
    child.once('close', (code) => reject(new Error(`It ended with ${code}: ${said}`)));
    for (const stream of [child.stdout, child.stderr])
      stream.setEncoding('utf8').on('data', (text: string) => {
        said += text;
        const [, origin] = /^Documentation\s+(\S+)\/$/m.exec(said) ?? [];
        const [, key] = /^Key\s+(\S+)$/m.exec(said) ?? [];
        if (origin && key && /^Try.*\n/m.test(said)) resolve({ origin, key });
      });
  });
}

test('from a clone to a pack of one’s own in under ten commands, by the README alone', async () => {
  const commands = writtenCommands();
  expect(commands.length).toBeGreaterThan(5);
  expect(commands.length).toBeLessThan(10);
  expect(commands.slice(0, 2)).toEqual(['git clone REPOSITORY slipmark && cd slipmark', 'npm ci']);
  cpSync(ROOT, folder, { recursive: true, filter: (path) => !NOT_CLONED.has(basename(path)) });
  // Packages come without a network: `.ci/run` is where they are really installed.
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
  writeFileSync(join(folder, 'edit.mjs'), EDITOR);

  const env = { ...process.env, EDITOR: 'node edit.mjs' };
  const said: Record<string, string> = {};
  let place = { origin: '', key: '' };
  for (const command of commands.slice(2)) {
    if (command === 'npm start') {
      place = await started(command);
      continue;
    }
    const told = command.replace('--key KEY', `--key ${place.key} --origin ${place.origin}`);
    const { stdout } = await promisify(execFile)('bash', ['-c', told], { cwd: folder, env });
    said[command.split(' ').slice(0, 3).join(' ')] = stdout;
  }

  expect(said['npx slipmark assess']).toContain('Nothing in this record blocks the release');
  const pack = readFileSync(join(folder, 'out/Q-OWN-not-released.pdf'));
  expect(pack.subarray(0, 5).toString()).toBe('%PDF-');
  expect(readFileSync(join(folder, 'out/Q-OWN-record.json'), 'utf8')).toContain('MINE-1');
  const [link = ''] = /http\S+\/p\/\S+/.exec(said['npx slipmark post'] ?? '') ?? [];
  const page = await (await fetch(link)).text();
  expect(page).toContain('Released');
  expect(page).toContain('MINE-1');
});
