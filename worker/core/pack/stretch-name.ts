import type { BatterySegment } from '../calc/electrical/electrical-result.ts';
import * as m from '../text/generated/messages.ts';
import { type Message, said, type Value } from '../text/message.ts';

const NAMES: Readonly<Record<BatterySegment['use'], Message>> = {
  'before-shedding': m.stretchName_untilLoadsShed,
  'after-shedding': m.stretchName_loadsLeftOn,
  landing: m.stretchName_approachLanding,
};

/** Returns the name of a segment of flight on the battery. */
export function stretchName(use: BatterySegment['use']): Value {
  return said(NAMES[use]);
}
