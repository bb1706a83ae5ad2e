import { isCount } from '../record/counts.ts';
import { hoursOnMeter } from '../record/meter-name.ts';
import type { Visit } from '../record/visit.ts';
import type { Formatter } from '../text/formatter.ts';
import * as m from '../text/generated/messages.ts';
import { OWNER_LIMIT_NAMES } from './owner-limit-names.ts';
import type { TighterLimit } from './tighter-limits.ts';
import { countTexts } from './views/due-limit.ts';

/** Returns a sentence with the value of the pack and the value that today's rules allow. */
export function tighterText(limit: TighterLimit, visit: Pick<Visit, 'meters'>, fmt: Formatter): string {
  const name = nameOf(limit, fmt);
  const [now, sealed] = valuesText(limit, visit, fmt);
  return sealed === undefined
    ? fmt.text(m.tighterText_todayPackNotSay, { name, now })
    : fmt.text(m.tighterText_todayPackSays, { name, now, sealed });
}

/** Every name except ours is a text of the record. */
function nameOf({ id, name }: TighterLimit, fmt: Formatter): string {
  return isOurs(id) ? fmt.text(OWNER_LIMIT_NAMES[id]) : name;
}

const isOurs = (id: string): id is keyof typeof OWNER_LIMIT_NAMES => Object.hasOwn(OWNER_LIMIT_NAMES, id);

function valuesText(limit: TighterLimit, visit: Pick<Visit, 'meters'>, fmt: Formatter): [now: string, sealed?: string] {
  const { quantity, now, sealed } = limit;
  const isMeasure = quantity === 'mass' || quantity === 'volume' || quantity === 'arm';
  if (isMeasure && typeof now === 'number' && typeof sealed === 'number') return fmt.apart(quantity, now, sealed);
  const text = valueText(limit, now, visit, fmt);
  return sealed === null ? [text] : [text, valueText(limit, sealed, visit, fmt)];
}

function valueText(
  { quantity, meter, counter }: TighterLimit,
  value: number | string | null,
  visit: Pick<Visit, 'meters'>,
  fmt: Formatter,
): string {
  if (value === null) return fmt.text(m.noneAllowed);
  if (typeof value === 'string') return fmt.date(value);
  if (quantity === 'hours') return hoursOnMeter(visit, { hours: value, meter }, fmt, 'most');
  if (isCount(quantity)) return countTexts(visit, { [quantity]: value }, counter && [counter], fmt).join();
  return quantity === 'date' ? String(value) : fmt.measure(quantity, value);
}
