import type { StateBlock } from './state-block.ts';
import { STATE_BLOCKS } from './state-blocks.ts';
import { WIDER_BLOCKS } from './wider-blocks.ts';

/** Marks that are written without a hyphen, in the first of the two files of marks. */
const WITHOUT_HYPHEN: readonly string[] = ['HI', 'HL', 'JA', 'JR', 'N', 'UK', 'YV'];

/**
 * Returns the State whose block contains an address; undefined if none is known.
 *
 * @source two open data files that agree, as named at the table; ICAO Annex 10 itself was not read
 */
export function stateOf(address: number): string | undefined {
  return holderIn(STATE_BLOCKS, address);
}

/**
 * Returns the State of an address by one file alone, where the other file has no or a smaller block; undefined if none is
 * known.
 *
 * @source one open data file, as named at the table
 */
export function perhapsStateOf(address: number): string | undefined {
  return holderIn(WIDER_BLOCKS, address);
}

function holderIn(blocks: readonly StateBlock[], address: number): string | undefined {
  return blocks.find(({ from, to }) => address >= from && address <= to)?.state;
}

/**
 * Returns the State of the nationality mark of a registration; undefined if the mark is not known, or is shared.
 *
 * @source two open data files that agree, as named at the table; ICAO Annex 7 itself was not read
 * @example stateOfMarks('S5-QQQ')  // 'Slovenia'
 */
export function stateOfMarks(registration: string): string | undefined {
  const [before = '', after] = registration.split('-');
  const mark = after === undefined ? WITHOUT_HYPHEN.find((begin) => registration.startsWith(begin)) : before;
  return [...STATE_BLOCKS, ...WIDER_BLOCKS].find(({ marks }) => mark !== undefined && marks.includes(mark))?.state;
}
