import { cloudflareTest, readD1Migrations } from '@cloudflare/vitest-plugin';
import { defineConfig } from 'vitest/config';

const ROOT = `${import.meta.dirname}/..`;

// One project a place the code has to run in. Tests mirror the folders of worker/.
/** A slow machine is no failure: only what hangs is ended. */
const PATIENCE = { testTimeout: 120_000, hookTimeout: 120_000 } as const;

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          ...PATIENCE,
          // Most of the time of a run: every processor takes part.
          maxWorkers: '100%',
          sequence: { groupOrder: 1 },
          name: 'core',
          root: ROOT,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/edge/{archive,faults,http}/**', 'tests/browser/**', 'tests/faults/**'],
        },
      },
      {
        plugins: [
          cloudflareTest(async () => ({
            wrangler: { configPath: `${ROOT}/worker/wrangler.jsonc` },
            miniflare: {
              // For the test runner only; the Worker itself asks for no part of Node.
              compatibilityFlags: ['nodejs_compat'],
              bindings: {
                SLIPMARK_ADMIN: 'secret-of-the-test-deployment',
                SLIPMARK_SEAL: 'seal-secret-of-the-test-deployment',
                MIGRATIONS: await readD1Migrations(`${ROOT}/worker/edge/archive/migrations`),
              },
            },
          })),
        ],
        test: {
          ...PATIENCE,
          name: 'worker',
          // Every test has a workshop of its own, so that files may share a runtime.
          isolate: false,
          root: ROOT,
          include: ['tests/edge/{archive,faults,http}/**/*.test.ts'],
          setupFiles: [`${ROOT}/tests/edge/migrated-index.ts`],
        },
      },
      {
        test: {
          ...PATIENCE,
          // The packaged browser unpacks itself into one place: one file after another.
          fileParallelism: false,
          name: 'browser',
          root: ROOT,
          include: ['tests/browser/**/*.test.ts'],
        },
      },
      {
        test: {
          ...PATIENCE,
          // Each has services of its own on both processors.
          fileParallelism: false,
          name: 'faults',
          root: ROOT,
          include: ['tests/faults/**/*.test.ts'],
          alias: { 'cloudflare:workers': `${ROOT}/tests/faults/abuse/durable-object.ts` },
        },
      },
    ],
  },
});
