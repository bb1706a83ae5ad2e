// Node script, `npm run bench:peers`: one document made by ours and by others, side by side in one run, each in a process of its own; then
// what ours costs as it grows. Judges nothing.
import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { parseArgs, promisify } from 'node:util';
import { build } from 'esbuild';
import { ROOT } from '../../../worker/local/service/places.ts';
import { inLittleMemory } from './in-little-memory.ts';
import { inWorkerd } from './in-workerd.ts';
import type { Cost } from './measure.ts';

const PAGES = 30;
const GROWING = [10, 50, 200, 500];

/** Makers by file, each with what it writes. A browser spends time and memory in processes of its own, which are not counted. */
const MAKERS = [
  { file: 'ours', name: 'ours, tagged, A-3a and UA-1', elsewhere: false },
  { file: 'pdfkit', name: 'pdfkit, untagged', elsewhere: false },
  { file: 'pdfkit-tagged', name: 'pdfkit, tagged, A-3a', elsewhere: false },
  { file: 'pdfmake', name: 'pdfmake, untagged', elsewhere: false },
  { file: 'react-pdf', name: '@react-pdf/renderer, untagged', elsewhere: false },
  { file: 'jspdf', name: 'jspdf and autotable, untagged', elsewhere: false },
  { file: 'chromium', name: 'Chromium kept open, tagged', elsewhere: true },
] as const;

/** Ours as it is deployed, in one file of JavaScript: as many modules of TypeScript, loading would take longer than printing. */
const OURS = join(ROOT, 'dist/bench/ours.mjs');

const COLUMNS = { warmMs: 'warm ms', coldMs: 'cold ms', cpuMs: 'CPU ms', peakMb: 'peak MB', kilobytes: 'kB' } as const;
type Column = keyof typeof COLUMNS;

const columns = Object.keys(COLUMNS) as Column[];
const FONTS = process.env.BENCH_FONTS === 'subset' ? 'subset beforehand for all' : 'as published';
const say = (line: string): void => console.log(line);

async function measured(file: string, pages: number, runs: number): Promise<Cost> {
  const script = join(import.meta.dirname, 'measure.ts');
  const module = file === 'ours' ? OURS : join(import.meta.dirname, `makers/${file}.ts`);
  const { stdout } = await promisify(execFile)(process.execPath, [script, module, String(pages), String(runs)]);
  return JSON.parse(stdout.trim().split('\n').at(-1) ?? '') as Cost;
}

function line(name: string, cells: readonly string[]): string {
  return `${name.padEnd(32)}${cells.map((cell) => cell.padStart(10)).join('')}`;
}

function compare(costs: ReadonlyMap<string, Partial<Cost>>): void {
  const ours = costs.get(MAKERS[0].name);
  const others = [...costs].slice(1);
  say('\nTimes ours: how much more each of the others takes');
  for (const [name, cost] of others) {
    say(
      line(
        name,
        columns.map((column) => ratio(cost[column], ours?.[column])),
      ),
    );
  }
  for (const column of columns) {
    const better = others.filter(([, cost]) => (cost[column] ?? Number.POSITIVE_INFINITY) < (ours?.[column] ?? 0));
    if (better.length > 0) say(`Ours loses in ${COLUMNS[column]} to: ${better.map(([name]) => name).join('; ')}`);
  }
}

function ratio(theirs: number | undefined, ours: number | undefined): string {
  return theirs === undefined || ours === undefined ? '-' : (theirs / ours).toFixed(2);
}

await build({
  entryPoints: [join(import.meta.dirname, 'makers/ours.ts')],
  outfile: OURS,
  bundle: true,
  format: 'esm',
  target: 'es2024',
  platform: 'neutral',
  mainFields: ['module', 'main'],
  logLevel: 'error',
});
const { values } = parseArgs({ options: { runs: { type: 'string', default: '15' } } });
const runs = Number(values.runs);

say(
  `${PAGES} pages, each a heading, two paragraphs, 35 × 6 cells and a plot, fonts ${FONTS}; median of ${runs} warm runs`,
);
say(line('', Object.values(COLUMNS)));
const costs = new Map<string, Partial<Cost>>();
for (const { file, name, elsewhere } of MAKERS) {
  const { cpuMs, peakMb, ...cost } = await measured(file, PAGES, runs);
  const known: Partial<Cost> = elsewhere ? cost : { ...cost, cpuMs, peakMb };
  costs.set(name, known);
  say(
    line(
      name,
      columns.map((column) => known[column]?.toFixed(column === 'kilobytes' ? 0 : 1) ?? '-'),
    ),
  );
}
compare(costs);

say('\nOurs as it grows: the same when the cost of a page stays level');
for (const pages of GROWING) {
  const { warmMs, peakMb, kilobytes } = await measured('ours', pages, Math.max(3, Math.round((runs * 30) / pages / 2)));
  say(
    `${String(pages).padStart(5)} pages: ${(warmMs / pages).toFixed(2)} ms and ${(kilobytes / pages).toFixed(1)} kB a page, peak ${peakMb.toFixed(0)} MB`,
  );
}

say('');
say(await inWorkerd(200, 0));
say(await inWorkerd(200, 20));
say(inLittleMemory());
