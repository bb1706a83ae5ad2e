import type { Page } from '../page.ts';
import { prose } from '../prose.ts';

/** Command, tables, schema and client, command by command. */
export const tools: Page = {
  path: '/tools',
  title: 'Command line and client',
  description: 'One command for the shell, tables for spreadsheets, a schema for editors, a client for TypeScript',
  body: prose('tools'),
};
