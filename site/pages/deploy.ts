import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

export const deploy: Page = {
  path: '/deploy',
  title: 'Host it yourself',
  description: 'From an account to a workshop with a key',
  body: prose('deploy'),
};
