import type { Conductor } from '../calc/electrical/wire-table.ts';
import { nodeKey } from '../calc/wiring/pin-graph.ts';
import type { Wire } from '../record/visit.ts';
import * as m from '../text/generated/messages.ts';
import { said, type Value } from '../text/message.ts';

/** Name of a wire: its mark, else its ends. */
export function wireName({ mark, from, to }: Wire): Value {
  return mark ?? said(m.wireName_fromTo, { nodeKey: nodeKey(from), nodeKey2: nodeKey(to) });
}

/** Name of a wire in data: its mark, else one of its ends. */
export function wireKey({ mark, from }: Wire): string {
  return mark ?? nodeKey(from);
}

/**
 * Name of a conductor in a sentence.
 *
 * @example conductorName({ gauge: '8', material: 'aluminium' })  // '8 AWG aluminium'
 */
export function conductorName({ gauge, material = 'copper' }: Conductor): Value {
  return material === 'copper' ? `${gauge} AWG` : said(m.wireName_awgAluminium, { gauge });
}
