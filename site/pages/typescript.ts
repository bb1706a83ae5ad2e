import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** Page with a complete visit in one TypeScript script. */
export const typescript: Page = {
  path: '/typescript',
  title: 'Connect your tool from TypeScript',
  description: 'A TypeScript script: send a record, read its findings, release it, save the pack',
  body: prose('typescript'),
};
