/** Part of a file, in bytes. */
export interface ByteRange {
  offset: number;
  length: number;
}

/** Range that a `Range` header requests: a part, everything, or a part that does not exist. */
export type WantedRange = { kind: 'part'; range: ByteRange } | { kind: 'whole' } | { kind: 'none' };

/**
 * Parses a `Range` header (RFC 9110, 14.2). For several ranges, other units and unreadable headers the whole is
 * returned, as the standard allows.
 */
export function wantedRange(header: string | null, size: number): WantedRange {
  const [, first, last] = /^bytes=(\d*)-(\d*)$/.exec(header?.trim() ?? '') ?? [];
  if (first === undefined || last === undefined || (first === '' && last === '')) return { kind: 'whole' };
  const from = first === '' ? Math.max(0, size - Number(last)) : Number(first);
  const to = first === '' || last === '' ? size - 1 : Math.min(Number(last), size - 1);
  if (first !== '' && last !== '' && Number(last) < Number(first)) return { kind: 'whole' };
  if (from >= size || to < from) return { kind: 'none' };
  return { kind: 'part', range: { offset: from, length: to - from + 1 } };
}
