import { COUNT_TEXTS, type NumberClock } from '../record/counts.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { type Said, said } from '../text/message.ts';

/** Says a number of hours, or of what a counter counts. */
export function saidClock(clock: NumberClock, value: number): Said {
  if (clock === 'hours') return said(m.hours, { hours: figure.plain(value, 1) });
  return said(COUNT_TEXTS[clock], { landings: value, figure: figure.plain(value, 0) });
}
