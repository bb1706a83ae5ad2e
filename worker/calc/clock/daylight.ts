import { Body, Observer, SearchRiseSet } from 'astronomy-engine';

export interface Place {
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM?: number | undefined;
}

const SET = -1;
/** Lower places than this are refused by the package; none on dry land is. */
const LOWEST_M = -500;

/**
 * The first sunset at a place after a moment, UTC to the second; undefined where the sun does not set within a day.
 *
 * @source upper limb at the horizon with usual refraction, astronomy-engine 2.1
 */
export function sunsetAfter({ latitudeDeg, longitudeDeg, elevationM = 0 }: Place, moment: string): string | undefined {
  const observer = new Observer(latitudeDeg, longitudeDeg, Math.max(elevationM, LOWEST_M));
  const found = SearchRiseSet(Body.Sun, observer, SET, new Date(moment), 1);
  return found ? `${found.date.toISOString().slice(0, 19)}Z` : undefined;
}
