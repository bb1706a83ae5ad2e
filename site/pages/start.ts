import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** Start page: purpose, start, result. */
export const start: Page = {
  path: '/',
  title: 'Slipmark',
  description: 'From the record of a light-aircraft workshop visit to a computed, checked and sealed release pack',
  body: prose('start'),
};
