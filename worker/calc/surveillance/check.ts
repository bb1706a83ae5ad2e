/** Something that a test has to show and that has no figure. */
export interface Check {
  /** What is so when it is passed. */
  name: string;
  /** Paragraph that asks for it. */
  paragraph: string;
  outcome: 'passed' | 'failed' | 'not recorded';
}

/** A check of which the record says whether it was passed, or nothing. */
export function checkOf(paragraph: string, name: string, isPassed: boolean | undefined): Check {
  const outcome = isPassed === undefined ? 'not recorded' : isPassed ? 'passed' : 'failed';
  return { name, paragraph, outcome };
}
