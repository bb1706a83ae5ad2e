import type { Station } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';

/** Returns the lateral arm of a station, or its range over the content of a tank; right is positive. */
export function stationLateralText(fmt: PackContext['fmt'], station: Station): string {
  const table = 'capacityL' in station ? (station.armByVolume ?? []) : [];
  const arms = table.map(({ lateralArmMm }) => lateralArmMm ?? station.lateralArmMm).filter((arm) => arm !== undefined);
  const [first, last] = [arms[0], arms.at(-1)];
  const number = (mm: number): string => fmt.number('arm', mm, { signed: true });
  if (first !== undefined && last !== undefined && first !== last)
    return fmt.text(m.to, { text: number(first), text2: number(last) });
  const arm = first ?? station.lateralArmMm;
  return arm === undefined ? DASH : number(arm);
}
