import type { Electrical } from '../../record/visit.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';

/** Voltage of the battery bus at which a warning should come on at the latest: AC 43.13-1B 11-35b (read). */
export const LOW_VOLTAGE_V: Readonly<Record<Electrical['system'], number>> = { '14-volt': 13, '28-volt': 26 };

/** Share of the source that a load may reach unwatched: AC 43.13-1B 11-35a (read). */
const UNWATCHED_SHARE = 0.8;

/**
 * Whether a continuous load is so great that the crew have to have something to watch it by.
 *
 * @source AC 43.13-1B 11-35a, read
 */
export function needsWatching(continuousA: number, capacityA: number): boolean {
  return !isAtMost(continuousA, UNWATCHED_SHARE * capacityA);
}

/** Whether a low-voltage warning is fitted and comes on in time; one whose set point is not known does not count. */
export function warnsInTime({ system, lowVoltageWarning }: Electrical): boolean {
  const { isFitted = false, setPointV = 0 } = lowVoltageWarning ?? {};
  return isFitted && isAtLeast(setPointV, LOW_VOLTAGE_V[system]);
}

/** Whether a source is watched by something that the record names. */
export function isWatched({ isMonitored = false, monitoredBy }: Electrical['sources'][number]): boolean {
  return isMonitored && monitoredBy !== undefined;
}
