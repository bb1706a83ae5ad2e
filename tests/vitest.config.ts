import { defineConfig } from 'vitest/config';

// One project a place the code has to run in. Tests mirror the folders of worker/.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'core',
          root: `${import.meta.dirname}/..`,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/worker/**', 'tests/browser/**'],
        },
      },
    ],
  },
});
