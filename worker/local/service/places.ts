import { join } from 'node:path';

/** Root of the working tree. */
export const ROOT = join(import.meta.dirname, '../../..');
export const WORKER = join(ROOT, 'worker');
/** Storage of the embedded service, with its memory between starts. */
export const STORAGE = join(ROOT, '.slipmark');
export const SITE = join(ROOT, 'site/dist');
export const OUT = join(ROOT, 'out');
