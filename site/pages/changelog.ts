import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

export const changelog: Page = {
  path: '/changelog',
  title: 'Changelog',
  description: 'What changed for people who send records or read packs',
  body: prose('changelog'),
};
