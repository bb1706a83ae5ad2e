import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** Page with a complete visit in one Python script. */
export const python: Page = {
  path: '/python',
  title: 'Connect your tool from Python',
  description: 'A Python script: send a record, read its findings, release it, save the pack',
  body: prose('python'),
};
