import type { Page } from '../page.ts';
import { prose } from '../prose.ts';

export const cautions: Page = {
  path: '/cautions',
  title: 'Safety and limits',
  description: 'What a result is, and what can hurt somebody while the work goes on',
  body: prose('cautions'),
};
