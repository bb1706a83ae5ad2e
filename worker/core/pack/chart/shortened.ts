const NARROW = /[a-ln-vx-z0-9 .,;:!?'"()[\]/\\|*+<>=_-]/;
const WIDER = /[A-Zmw%&@]/;

/** Never less than a sign takes in the faces of the pack, in em. */
function widthEm(sign: string): number {
  if (NARROW.test(sign)) return 0.58;
  return WIDER.test(sign) ? 0.86 : 1.2;
}

/** A name that surely fits beside a chart; the table at its side has it whole. */
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
