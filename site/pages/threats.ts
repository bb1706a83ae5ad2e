import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** Page with the threats to the archive, the measures against them, and the remaining risks. */
export const threats: Page = {
  path: '/threats',
  title: 'Security',
  description: 'Assets, entry points, defences and their tests, and what is not defended',
  body: prose('threats'),
};
