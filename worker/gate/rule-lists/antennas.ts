import type { Rule } from '../rule.ts';
import { antennasClose } from '../rules/antennas-close.ts';
import { bondHigh } from '../rules/bond-high.ts';
import { bondUnstated } from '../rules/bond-unstated.ts';
import { cableLossHigh } from '../rules/cable-loss-high.ts';
import { plateSmall } from '../rules/plate-small.ts';
import { standingWaveHigh } from '../rules/standing-wave-high.ts';

/** Rules of antennas, their ground planes, feeds and spacing. */
export const ANTENNA_RULES: readonly Rule[] = [
  plateSmall,
  antennasClose,
  cableLossHigh,
  bondHigh,
  bondUnstated,
  standingWaveHigh,
];
