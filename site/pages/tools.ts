import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** Page with command line, tables, schema and client. */
export const tools: Page = {
  path: '/tools',
  title: 'Command line and client',
  description: 'A command for the shell, tables for spreadsheets, a schema for editors, a client for TypeScript',
  body: prose('tools'),
};
