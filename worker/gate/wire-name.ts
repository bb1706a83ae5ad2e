import type { Conductor } from '../calc/electrical/wire-table.ts';
import { nodeKey } from '../calc/wiring/pin-graph.ts';
import * as m from '../text/generated/messages.ts';
import { said } from '../text/message.ts';
import type { Printer } from '../text/print.ts';
import type { Wire } from '../visit/visit.ts';

/** What a wire is called: its mark, else its ends. */
export function wireName({ mark, from, to }: Wire, say: Printer): string {
  return mark ?? said(m.wireName_fromTo, { nodeKey: nodeKey(from), nodeKey2: nodeKey(to) });
}

/**
 * What a conductor is called in a sentence.
 *
 * @example conductorName({ gauge: '8', material: 'aluminium' }, say)  // '8 AWG aluminium'
 */
export function conductorName({ gauge, material = 'copper' }: Conductor, say: Printer): string {
  return material === 'copper' ? `${gauge} AWG` : said(m.wireName_awgAluminium, { gauge });
}
