import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Example } from '../browser/bench/examples.ts';

const FIXTURES = join(import.meta.dirname, '../../fixtures');
/** Folder of the files that examples name. */
export const ATTACHMENTS = join(FIXTURES, 'attachments');
const FILES = ['connector-with-alpha.png', 'loom-on-its-side.jpg', 'loom.jpg', 'release-certificate.pdf'];

/** Example visit with every kind of work. */
export const FULL_EXAMPLE: Example = {
  name: 'nose-wheel-full',
  title: 'Three days: avionics, service, weighing',
  at: '2026-11-05T13:20:00Z',
  files: FILES.map((name) => `/examples/files/${name}`),
};

/** Invented visits, each at a time at which its authorisations are valid. */
const EXAMPLES: readonly Example[] = [
  {
    name: 'weighing-only',
    title: 'A weighing and nothing else (lb, in)',
    at: '2026-09-18T22:00:00Z',
    files: [],
  },
  {
    name: 'computed-only',
    title: 'A change of equipment, computed',
    at: '2026-10-09T14:00:00Z',
    files: [],
  },
  { name: 'trike', title: 'A weight-shift trike', at: '2026-10-22T15:30:00Z', files: [] },
  FULL_EXAMPLE,
];

/** Writes the examples that the pages offer. */
export function writeExamples(folder: string): void {
  mkdirSync(join(folder, 'files'), { recursive: true });
  writeFileSync(join(folder, 'index.json'), JSON.stringify(EXAMPLES));
  for (const { name } of EXAMPLES) copyFileSync(join(FIXTURES, 'visits', `${name}.json`), join(folder, `${name}.json`));
  for (const name of FILES) copyFileSync(join(ATTACHMENTS, name), join(folder, 'files', name));
}
