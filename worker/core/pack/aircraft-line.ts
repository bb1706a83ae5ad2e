import * as m from '../text/generated/messages.ts';
import type { PackContext } from './context.ts';

/** Returns registration, type and serial number: the line under the title of every document. */
export function aircraftLine({ visit, fmt }: PackContext): string {
  const { registration, maker, model, serial } = visit.aircraft;
  return fmt.text(m.aircraftLine_serialNumber, { registration, maker, model, serial });
}
