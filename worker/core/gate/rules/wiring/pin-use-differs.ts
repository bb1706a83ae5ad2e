import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Contacts that carry a signal, whose level must be known. */
const SIGNALS: ReadonlySet<string> = new Set(['in', 'out', 'both']);

/** Contacts that carry a supply. */
const POWER: ReadonlySet<string> = new Set(['power', 'power-out']);

/** Contacts that carry nothing. */
const IDLE: ReadonlySet<string> = new Set(['spare', 'shield']);

export const pinUseDiffers: Rule = {
  code: 'PIN_USE_DIFFERS',
  severity: 'caution',
  meaning: 'A contact is marked otherwise than its wire shows, or states no level',
  remedy: m.pinUseDiffers_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.wiring?.nets, ({ pins, reaches }) =>
      hits(pins, ({ key, pin, path }) => {
        const other = pins.find((each) => each.key !== key && SIGNALS.has(each.pin.direction));
        const data = { pin: key };
        if (pin.direction === 'spare' && !other && (pins.length > 1 || reaches.size > 0))
          return {
            path: [...path, 'direction'],
            sentence: said(m.pinUseDiffers_spare, { pin: key, signal: pin.signal }),
            data,
          };
        if (SIGNALS.has(pin.direction) && (reaches.has('bus') || reaches.has('protection')))
          return {
            path: [...path, 'direction'],
            sentence: said(m.pinUseDiffers_supplied, {
              pin: key,
              signal: pin.signal,
              direction: termOf(pin.direction),
            }),
            data,
          };
        if (POWER.has(pin.direction) && pin.level !== 'supply')
          return {
            path: [...path, 'level'],
            sentence: said(m.pinUseDiffers_notSupply, { pin: key, signal: pin.signal }),
            data,
          };
        if (!other) return undefined;
        const values = { pin: key, signal: pin.signal, other: other.key };
        if (IDLE.has(pin.direction))
          return {
            path: [...path, 'direction'],
            sentence: said(m.pinUseDiffers_idle, { ...values, direction: termOf(pin.direction) }),
            data,
          };
        if (!SIGNALS.has(pin.direction) || pin.level !== undefined || other.pin.level === undefined) return undefined;
        return {
          path: [...path, 'level'],
          sentence: said(m.pinUseDiffers_noLevel, { ...values, level: termOf(other.pin.level) }),
          data,
        };
      }),
    ),
};
