interface Stored {
  bytes: Uint8Array<ArrayBuffer>;
  customMetadata: Record<string, string>;
}

interface Range {
  offset: number;
  length: number;
}

/** An R2 bucket in memory, as far as the archive uses it. */
export function bucket() {
  const objects = new Map<string, Stored>();
  return {
    async put(key: string, body: string | Uint8Array<ArrayBuffer>, { customMetadata = {} }: Partial<Stored> = {}) {
      const bytes = typeof body === 'string' ? new TextEncoder().encode(body) : body.slice();
      objects.set(key, { bytes, customMetadata });
    },
    async head(key: string) {
      const stored = objects.get(key);
      return stored ? { size: stored.bytes.length, customMetadata: stored.customMetadata } : null;
    },
    async get(key: string, { range }: { range?: Range } = {}) {
      const stored = objects.get(key);
      if (!stored) return null;
      const part = range ? stored.bytes.subarray(range.offset, range.offset + range.length) : stored.bytes;
      const response = new Response(part);
      return {
        body: response.body,
        json: () => response.json(),
        text: () => response.text(),
        arrayBuffer: () => response.arrayBuffer(),
      };
    },
  };
}
