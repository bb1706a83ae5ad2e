import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

export const deploy: Page = {
  path: '/deploy',
  title: 'Host it yourself',
  description: 'Put Slipmark on your own account, from the stores to the first key',
  body: prose('deploy'),
};
