import type { Rule } from '../../rule.ts';
import { antennasClose } from './antennas-close.ts';
import { bondHigh } from './bond-high.ts';
import { bondUnstated } from './bond-unstated.ts';
import { cableLossHigh } from './cable-loss-high.ts';
import { plateSmall } from './plate-small.ts';
import { standingWaveHigh } from './standing-wave-high.ts';

/** Rules of antennas, their ground planes, feeds and spacing. */
export const ANTENNA_RULES: readonly Rule[] = [
  plateSmall,
  antennasClose,
  cableLossHigh,
  bondHigh,
  bondUnstated,
  standingWaveHigh,
];
