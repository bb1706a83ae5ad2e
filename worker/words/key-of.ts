const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz$_0123456789';
/** Those that may begin a name in code, so that no key needs quotes. */
const FIRST = 54;
const LENGTH = 6;

/**
 * The key of an English text in a compiled catalogue: six characters that follow from the text. Another text has the same key with a
 * chance of one in 58 thousand million; the build refuses a catalogue in which two do.
 */
export function keyOf(text: string): string {
  let [high, low] = [0xdeadbeef, 0x41c6ce57];
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    high = Math.imul(high ^ code, 0x9e3779b1);
    low = Math.imul(low ^ code, 0x5f356495);
  }
  high = Math.imul(high ^ (high >>> 16), 0x85ebca6b) ^ Math.imul(low ^ (low >>> 13), 0xc2b2ae35);
  low = Math.imul(low ^ (low >>> 16), 0x85ebca6b) ^ Math.imul(high ^ (high >>> 13), 0xc2b2ae35);
  // 53 bits, as many as a number holds exactly.
  let rest = (high & 0x1fffff) * 0x1_0000_0000 + (low >>> 0);
  let key = DIGITS[rest % FIRST] ?? '';
  rest = Math.floor(rest / FIRST);
  while (key.length < LENGTH) {
    key += DIGITS[rest % DIGITS.length];
    rest = Math.floor(rest / DIGITS.length);
  }
  return key;
}
