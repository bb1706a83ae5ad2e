import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** The whole way of a visit in one script. */
export const typescript: Page = {
  path: '/typescript',
  title: 'Connect your tool from TypeScript',
  description: 'A TypeScript script: send a record, read its findings, release it, save the pack',
  body: prose('typescript'),
};
