/** Block of aircraft addresses and the State that it is allotted to. */
export interface StateBlock {
  from: number;
  to: number;
  state: string;
  /** Nationality marks of the State, and of territories that use its block. */
  marks: readonly string[];
}

/**
 * Reads a table of blocks, one a line: first address in hexadecimal, size as a power of two, marks, State.
 *
 * @example blocksIn('004000 10 Z Zimbabwe')  // from 0x004000 to 0x0043ff
 */
export function blocksIn(table: string): StateBlock[] {
  return table.split('\n').map((line) => {
    const [first = '', power = '', marks = '', ...state] = line.split(' ');
    const from = Number.parseInt(first, 16);
    return {
      from,
      to: from + 2 ** Number(power) - 1,
      state: state.join(' '),
      marks: marks === '-' ? [] : marks.split(','),
    };
  });
}
