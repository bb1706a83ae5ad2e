import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

export const cautions: Page = {
  path: '/cautions',
  title: 'Safety and limits',
  description: 'What a result means, and what can hurt somebody during the work',
  body: prose('cautions'),
};
