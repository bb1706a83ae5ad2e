import type { TRANSPONDER_CLASSES } from '../../visit/surveillance.ts';

export type TransponderClass = (typeof TRANSPONDER_CLASSES)[number];

/** A figure against its limits; `least` and `most` are undefined where there is none. */
export interface Limited {
  name: string;
  value: number;
  unit: string;
  least?: number;
  most?: number;
  isWithin: boolean;
}

/** A portable test set couples through the air, so its measurement of sensitivity may lose this, and nothing else may. */
const COUPLING_DB = 3;
const MODE_S_STRICT: readonly TransponderClass[] = ['S-1A', 'S-2A', 'S-3A', 'S-4'];
const HIGH_POWER: readonly TransponderClass[] = ['AC-1A', 'AC-2A', ...MODE_S_STRICT];

export interface TransponderFigures {
  class: TransponderClass;
  replyFrequencyMhz: number;
  outputDbw: number;
  sensitivityDbm: number;
  sidelobeRepliesPercent: number;
  wantedRepliesPercent: number;
  testSet: { isPortable?: boolean | undefined };
}

/**
 * Figures of a transponder test against their limits.
 *
 * @source 14 CFR 43 Appendix F, first paragraph and (a) to (d); limits of power taken in dBW as printed, 125 W being 20.97 dBW
 */
export function transponderFigures(test: TransponderFigures): Limited[] {
  const isModeS = test.class.startsWith('S');
  const coupling = test.testSet.isPortable ? COUPLING_DB : 0;
  const offMhz = MODE_S_STRICT.includes(test.class) ? 1 : 3;
  const [middleDbm, offDb] = isModeS ? [-74, 3] : [-73, 4];
  const leastDbw = HIGH_POWER.includes(test.class) ? 21 : 18.5;
  return [
    limited('Reply frequency', test.replyFrequencyMhz, 'MHz', { least: 1090 - offMhz, most: 1090 + offMhz }),
    limited('Peak output power', test.outputDbw, 'dBW', { least: leastDbw, most: 27 }),
    limited('Sensitivity', test.sensitivityDbm, 'dBm', {
      least: middleDbm - offDb,
      most: middleDbm + offDb + coupling,
    }),
    limited('Replies with P2 equal to P1', test.sidelobeRepliesPercent, '%', { most: 1 }),
    limited('Replies with P2 9 dB down', test.wantedRepliesPercent, '%', { least: 90 }),
  ];
}

/** A value held against its limits; both ends count as within. */
export function limited(
  name: string,
  value: number,
  unit: string,
  { least, most }: { least?: number; most?: number },
): Limited {
  const isWithin = value >= (least ?? Number.NEGATIVE_INFINITY) && value <= (most ?? Number.POSITIVE_INFINITY);
  return { name, value, unit, ...(least !== undefined && { least }), ...(most !== undefined && { most }), isWithin };
}
