import * as m from '../text/generated/messages.ts';
import type { Printer } from '../text/print.ts';
import { hoursOnMeter } from '../visit/meter-name.ts';
import type { Visit } from '../visit/visit.ts';
import { OWNER_LIMIT_NAMES } from './owner-limit-names.ts';
import type { TighterLimit } from './tighter-limits.ts';
import { landingsText } from './views/counts.ts';

/** What a pack says and what today's rules allow, in a sentence. */
export function tighterText(limit: TighterLimit, visit: Pick<Visit, 'meters'>, say: Printer): string {
  const name = nameOf(limit, say);
  const [now, sealed] = valuesText(limit, visit, say);
  return sealed === undefined
    ? say.text(m.tighterText_todayPackNotSay, { name, now })
    : say.text(m.tighterText_todayPackSays, { name, now, sealed });
}

/** Every name but those of ours is a text of the record. */
function nameOf({ id, name }: TighterLimit, say: Printer): string {
  return isOurs(id) ? say.text(OWNER_LIMIT_NAMES[id]) : name;
}

const isOurs = (id: string): id is keyof typeof OWNER_LIMIT_NAMES => Object.hasOwn(OWNER_LIMIT_NAMES, id);

function valuesText(limit: TighterLimit, visit: Pick<Visit, 'meters'>, say: Printer): [now: string, sealed?: string] {
  const { quantity, now, sealed } = limit;
  const isMeasure = quantity === 'mass' || quantity === 'volume' || quantity === 'arm';
  if (isMeasure && typeof now === 'number' && typeof sealed === 'number') return say.apart(quantity, now, sealed);
  const text = valueText(limit, now, visit, say);
  return sealed === null ? [text] : [text, valueText(limit, sealed, visit, say)];
}

function valueText(
  { quantity, meter }: TighterLimit,
  value: number | string | null,
  visit: Pick<Visit, 'meters'>,
  say: Printer,
): string {
  if (value === null) return say.text(m.noneAllowed);
  if (typeof value === 'string') return say.date(value);
  if (quantity === 'hours') return hoursOnMeter(visit, { hours: value, meter }, say, 'most');
  if (quantity === 'landings') return landingsText(value, say);
  return quantity === 'date' ? String(value) : say.measure(quantity, value);
}
