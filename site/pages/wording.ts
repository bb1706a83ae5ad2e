import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

export const wording: Page = {
  path: '/wording',
  title: 'Plain words',
  description: 'How texts of packs, pages, findings, code and commits are written',
  body: prose('wording'),
};
