import type { Check } from './surveillance-result.ts';

export type { Check } from './surveillance-result.ts';

/** A check of which the record says whether it was passed, or nothing. */
export function checkOf(paragraph: string, check: Check['check'], isPassed: boolean | undefined): Check {
  const outcome = isPassed === undefined ? 'not recorded' : isPassed ? 'passed' : 'failed';
  return { check, paragraph, outcome };
}
