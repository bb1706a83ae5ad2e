import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** Page with the commands to export, verify and import an archive. */
export const movingHouse: Page = {
  path: '/moving-house',
  title: 'Back-up and move',
  description: 'Export an archive as a folder, prove it offline, import it into another deployment',
  body: prose('moving-house'),
};
