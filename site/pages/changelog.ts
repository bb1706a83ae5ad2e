import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

export const changelog: Page = {
  path: '/changelog',
  title: 'Changelog',
  description: 'What changed, for those who post and those who read',
  body: prose('changelog'),
};
