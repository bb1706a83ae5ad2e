const NARROW = /[a-ln-vx-z0-9 .,;:!?'"()[\]/\\|*+<>=_-]/;
const WIDER = /[A-Zmw%&@]/;

/** Returns an upper bound of a character's width in the typefaces of the pack, in em. */
function widthEm(sign: string): number {
  if (NARROW.test(sign)) return 0.58;
  return WIDER.test(sign) ? 0.86 : 1.2;
}

/** Shortens a name to fit next to a chart; the table next to it has it whole. */
export function shortened(name: string, roomEm: number): string {
  const signs = [...name];
  let usedEm = 0;
  const fits = signs.findIndex((sign) => {
    usedEm += widthEm(sign);
    return usedEm > roomEm;
  });
  return fits < 0
    ? name
    : `${signs
        .slice(0, Math.max(0, fits - 1))
        .join('')
        .trimEnd()}…`;
}
