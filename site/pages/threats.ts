import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** What could be done against the archive, what is done about it, and what is not. */
export const threats: Page = {
  path: '/threats',
  title: 'Security',
  description: 'Assets, entry points, defences and their tests, and what is not defended',
  body: prose('threats'),
};
