import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** Page with the calls from a first record to the owner's link. */
export const guide: Page = {
  path: '/guide',
  title: 'Connect your tool',
  description: 'Send a record, read what blocks the release, amend it, release it, give the owner a link',
  body: prose('guide'),
};
