import type { Page } from '../page.ts';
import { prose } from '../prose.ts';

/** What could be done against the archive, what is done about it, and what is not. */
export const threats: Page = {
  path: '/threats',
  title: 'Security',
  description: 'Assets, doors, what is defended and how it is tested, and what is not',
  body: prose('threats'),
};
