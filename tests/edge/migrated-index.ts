/// <reference types="@cloudflare/vitest-plugin/types" />
import { applyD1Migrations, type D1Migration } from 'cloudflare:test';
import { env } from 'cloudflare:workers';

await applyD1Migrations(env.INDEX, (env as { MIGRATIONS?: D1Migration[] }).MIGRATIONS ?? []);
