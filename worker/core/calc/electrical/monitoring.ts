import type { Electrical } from '../../record/visit.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';

/** Voltage of the battery bus at which a warning should come on at the latest: AC 43.13-1B 11-35b (read). */
export const LOW_VOLTAGE_V: Readonly<Record<Electrical['system'], number>> = { '14-volt': 13, '28-volt': 26 };

/** Share of the source that a load may reach without monitoring: AC 43.13-1B 11-35a (read). */
export const UNWATCHED_SHARE = 0.8;

/**
 * Whether a continuous load is so large that the crew need a means of monitoring.
 *
 * @source AC 43.13-1B 11-35a, read
 */
export function needsWatching(continuousA: number, capacityA: number): boolean {
  return !isAtMost(continuousA, UNWATCHED_SHARE * capacityA);
}

/** Whether a low-voltage warning is fitted and comes on in time; a warning with unknown set point does not count. */
export function warnsInTime({ system, lowVoltageWarning }: Electrical): boolean {
  const { isFitted = false, setPointV = 0 } = lowVoltageWarning ?? {};
  return isFitted && isAtLeast(setPointV, LOW_VOLTAGE_V[system]);
}

/** Whether an instrument of the record monitors a source. */
export function isWatched({ isMonitored = false, monitoredBy }: Electrical['sources'][number]): boolean {
  return isMonitored && monitoredBy !== undefined;
}
