import type { Check } from './surveillance-result.ts';

export type { Check } from './surveillance-result.ts';

/** Returns a check as passed, failed or not recorded. */
export function checkOf(paragraph: string, check: Check['check'], isPassed: boolean | undefined): Check {
  const outcome = isPassed === undefined ? 'not recorded' : isPassed ? 'passed' : 'failed';
  return { check, paragraph, outcome };
}
