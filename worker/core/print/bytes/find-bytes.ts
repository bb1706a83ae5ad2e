/** Where some bytes stand in others for the last time; -1 where they do not. */
export function lastIndexOf(bytes: Uint8Array, wanted: Uint8Array): number {
  for (let at = bytes.length - wanted.length; at >= 0; at--) {
    let same = 0;
    while (same < wanted.length && bytes[at + same] === wanted[same]) same++;
    if (same === wanted.length) return at;
  }
  return -1;
}
