/** Returns the last index of some bytes in others; -1 if absent. */
export function lastIndexOf(bytes: Uint8Array, wanted: Uint8Array): number {
  for (let at = bytes.length - wanted.length; at >= 0; at--) {
    let same = 0;
    while (same < wanted.length && bytes[at + same] === wanted[same]) same++;
    if (same === wanted.length) return at;
  }
  return -1;
}
