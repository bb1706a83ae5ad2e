/** Returns the number of a pack with its aircraft, without the issue: `Q-SLM-P1` of `Q-SLM-P1-2`. */
export const numberOf = (pack: string): string => pack.replace(/-\d+$/, '');
