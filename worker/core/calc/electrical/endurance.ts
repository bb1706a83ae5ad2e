import type { Electrical, Load } from '../../record/visit.ts';
import type { BatterySegment, Endurance } from './electrical-result.ts';
import { currentA, fitted, sumOf } from './load.ts';

export type { BatterySegment, Endurance } from './electrical-result.ts';

/** Minutes that a battery should last if the record states none: as in 14 CFR 23.1353(h), from memory. */
const DEFAULT_RESERVE_MIN = 30;

/**
 * Returns how long a battery carries known loads: usable Ah × 60, less recognition time and landing, divided by the
 * remaining load.
 *
 * @param usableAh ampere-hours: capacity × usable factor
 * @source worked example of an avionics manufacturer, read
 * @example enduranceOn({ usableAh: 26.25, recognise: { loadA: 43.5, minutes: 5 }, landing: { loadA: 48.1, minutes: 10
 *   }, shedA: 34 })
 */
export function enduranceOn(given: {
  usableAh: number;
  recognise: { loadA: number; minutes: number };
  landing: { loadA: number; minutes: number };
  shedA: number;
}): Pick<Endurance, 'usableAmpMinutes' | 'stretches' | 'minutes'> {
  const usableAmpMinutes = given.usableAh * 60;
  let leftAmpMinutes = usableAmpMinutes;
  const take = (use: BatterySegment['use'], loadA: number, wantedMin: number | undefined): BatterySegment => {
    const possibleMin = loadA > 0 ? leftAmpMinutes / loadA : undefined;
    const minutes =
      wantedMin === undefined || possibleMin === undefined
        ? (wantedMin ?? possibleMin)
        : Math.min(wantedMin, possibleMin);
    const ampMinutes = loadA * (minutes ?? 0);
    leftAmpMinutes = Math.max(0, leftAmpMinutes - ampMinutes);
    return { use, loadA, minutes, ampMinutes };
  };
  // The landing is kept in reserve, so it is subtracted before the segment that uses up the rest.
  const recognition = take('before-shedding', given.recognise.loadA, given.recognise.minutes);
  const landing = take('landing', given.landing.loadA, given.landing.minutes);
  const shed = take('after-shedding', given.shedA, undefined);
  const stretches = [recognition, shed, landing];
  const isEndless = stretches.some(({ minutes }) => minutes === undefined);
  return {
    usableAmpMinutes,
    stretches,
    minutes: isEndless ? undefined : stretches.reduce((sum, { minutes = 0 }) => sum + minutes, 0),
  };
}

/**
 * Returns how long the battery of a visit lasts after a failure of its source; undefined without a battery.
 *
 * @source as enduranceOn(); reserve of 30 minutes as in 14 CFR 23.1353(h), from memory
 */
export function batteryEndurance({ battery, loads, system }: Electrical): Endurance | undefined {
  if (!battery) return undefined;
  const aboard = fitted({ loads });
  const shedA = sumOf(aboard, 'sourceFailed', system).continuousA;
  const landingA = aboard.reduce((sum, load) => sum + landingCurrentA(load, system), 0);
  return {
    ...enduranceOn({
      usableAh: battery.capacityAh * battery.usableFactor,
      recognise: { loadA: sumOf(aboard, 'cruise', system).continuousA, minutes: battery.recogniseMin },
      landing: { loadA: landingA, minutes: battery.landingMin },
      shedA,
    }),
    neededMin: battery.reserveMin ?? DEFAULT_RESERVE_MIN,
  };
}

/**
 * Returns the current of a load in a landing on the battery: the same loads as before, all that are left on or needed to
 * land, each with min. its current after the failure. Intermittent ones count in full.
 *
 * @source common practice, no source
 */
export function landingCurrentA(load: Load, system: Electrical['system']): number {
  const failedA = currentA(load, 'sourceFailed', system);
  return load.isEssential || failedA > 0 ? Math.max(currentA(load, 'landing', system), failedA) : 0;
}
