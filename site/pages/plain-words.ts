import type { Page } from '../page.ts';
import { prose } from '../prose.ts';

export const plainWords: Page = {
  path: '/plain-words',
  title: 'Plain words',
  description: 'How texts of packs, pages, findings, code and commits are written',
  body: prose('plain-words'),
};
