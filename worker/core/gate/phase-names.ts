import type { Phase } from '../record/electrical.ts';
import * as m from '../text/generated/messages.ts';
import type { Message } from '../text/message.ts';

/** The phases of a load analysis. */
export const PHASE_NAMES: Readonly<Record<Phase, Message>> = {
  start: m.phaseNames_start,
  taxi: m.phaseNames_taxi,
  takeOff: m.phaseNames_takeOff,
  cruise: m.phaseNames_cruise,
  landing: m.phaseNames_landing,
  sourceFailed: m.phaseNames_sourceFailed,
};
