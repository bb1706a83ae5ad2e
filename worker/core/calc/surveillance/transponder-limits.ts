import type { TRANSPONDER_CLASSES } from '../../record/transponder-test.ts';
import { limited, limitedDifference } from './limited.ts';
import type { LimitCheck } from './surveillance-result.ts';
import { isModeS } from './transponder-checks.ts';

export type TransponderClass = (typeof TRANSPONDER_CLASSES)[number];

/** Loss of a portable test set, which couples through the air: allowed for its measurement of sensitivity and for nothing else. */
const COUPLING_DB = 3;
/** Max. difference between Mode 3/A and Mode C. */
const SENSITIVITY_DIFFERENCE_DB = 1;
/** Between the antenna selected and the other one, with diversity. */
const ISOLATION_LEAST_DB = 20;
const MODE_S_STRICT: readonly TransponderClass[] = ['S-1A', 'S-2A', 'S-3A', 'S-4'];
const HIGH_POWER: readonly TransponderClass[] = ['AC-1A', 'AC-2A', ...MODE_S_STRICT];

export interface TransponderFigures {
  class: TransponderClass;
  replyFrequencyMhz: number;
  outputDbw: number;
  sensitivityDbm: number;
  sidelobeRepliesPercent: number;
  wantedRepliesPercent: number;
  hasNarrowFrequency?: boolean | undefined;
  hasHighPower?: boolean | undefined;
  sensitivityModeADbm?: number | undefined;
  sensitivityModeCDbm?: number | undefined;
  modeS?: { isolationDb?: number | undefined } | undefined;
  testSet: { isPortable?: boolean | undefined };
}

/**
 * Returns the figures of a transponder test with their limits.
 *
 * @source 14 CFR 43 Appendix F, first paragraph and (a) to (e); limits of power taken in dBW as printed, 125 W being
 *   20.97 dBW
 */
export function transponderFigures(test: TransponderFigures): LimitCheck[] {
  const isS = isModeS(test);
  const coupling = test.testSet.isPortable ? COUPLING_DB : 0;
  const offMhz = MODE_S_STRICT.includes(test.class) || (isS && test.hasNarrowFrequency) ? 1 : 3;
  const [middleDbm, offDb] = isS ? [-74, 3] : [-73, 4];
  const leastDbw = HIGH_POWER.includes(test.class) || (isS && test.hasHighPower) ? 21 : 18.5;
  return [
    limited('reply-frequency', test.replyFrequencyMhz, 'MHz', { least: 1090 - offMhz, most: 1090 + offMhz }),
    limited('output-power', test.outputDbw, 'dBW', { least: leastDbw, most: 27 }),
    limited('sensitivity', test.sensitivityDbm, 'dBm', {
      least: middleDbm - offDb,
      most: middleDbm + offDb + coupling,
    }),
    ...sensitivityDifference(test),
    limited('sidelobe-replies', test.sidelobeRepliesPercent, '%', { most: 1 }),
    limited('wanted-replies', test.wantedRepliesPercent, '%', { least: 90 }),
    ...(isS && test.modeS?.isolationDb !== undefined
      ? [limited('antenna-isolation', test.modeS.isolationDb, 'dB', { least: ISOLATION_LEAST_DB })]
      : []),
  ];
}

/** The coupling allowance does not count here: both are measured through the same air. */
function sensitivityDifference({ sensitivityModeADbm, sensitivityModeCDbm }: TransponderFigures): LimitCheck[] {
  if (sensitivityModeADbm === undefined || sensitivityModeCDbm === undefined) return [];
  const terms = { read: sensitivityModeADbm, against: sensitivityModeCDbm };
  return [limitedDifference('sensitivity-difference', terms, 'dB', SENSITIVITY_DIFFERENCE_DB)];
}
