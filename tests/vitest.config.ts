import { cloudflareTest, readD1Migrations } from '@cloudflare/vitest-plugin';
import { defineConfig } from 'vitest/config';

const ROOT = `${import.meta.dirname}/..`;

// One project a place the code has to run in. Tests mirror the folders of worker/.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'core',
          root: ROOT,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/worker/**', 'tests/browser/**'],
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
                MIGRATIONS: await readD1Migrations(`${ROOT}/worker/archive/migrations`),
              },
            },
          })),
        ],
        test: {
          name: 'worker',
          // Every test has a workshop of its own, so that files may share a runtime.
          isolate: false,
          root: ROOT,
          include: ['tests/worker/**/*.test.ts'],
          setupFiles: [`${ROOT}/tests/worker/migrated-index.ts`],
        },
      },
      {
        test: {
          name: 'browser',
          root: ROOT,
          include: ['tests/browser/**/*.test.ts'],
        },
      },
    ],
  },
});
