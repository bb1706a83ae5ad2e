import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

export const cautions: Page = {
  path: '/cautions',
  title: 'Safety and limits',
  description: 'What a result is, and what can hurt somebody while the work goes on',
  body: prose('cautions'),
};
