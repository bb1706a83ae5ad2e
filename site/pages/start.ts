import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** What it is for, how to start it, what comes out. */
export const start: Page = {
  path: '/',
  title: 'Slipmark',
  description: 'From the record of a light-aircraft workshop visit to a computed, checked and sealed release pack',
  body: prose('start'),
};
