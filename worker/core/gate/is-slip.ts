/**
 * Whether two numbers differ as by a slip of the keyboard: in one character, or in two neighbours that are exchanged.
 *
 * @example isSlip('BP-2201', 'BP-2021')  // true
 */
export function isSlip(number: string, other: string): boolean {
  if (number.length !== other.length) return false;
  const places = [...number].flatMap((character, index) => (character === other[index] ? [] : [index]));
  const [first = 0, second = 0] = places;
  if (places.length !== 2) return places.length === 1;
  return second === first + 1 && number[first] === other[second] && number[second] === other[first];
}
