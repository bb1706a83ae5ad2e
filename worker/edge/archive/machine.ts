/**
 * Services of the local machine that the platform provides automatically: it knows which objects exist, because calling
 * one creates its file; and it flushes files to the disk before the ledger names them.
 */
export interface Machine {
  /** Whether an object with this identifier exists. */
  hasObject(className: 'Ledger' | 'Workshop', id: string): Promise<boolean>;
  /** Whether the database of an object is damaged: checked only if the object does not respond. */
  isDamaged(className: 'Ledger' | 'Workshop', id: string): Promise<boolean>;
  /** Resolves once the files under these keys of the bucket outlast a power cut. */
  settle(keys: readonly string[]): Promise<void>;
}

/** On the platform an object that was only read keeps nothing, and stored files are durable. */
const PLATFORM: Machine = {
  hasObject: async () => true,
  isDamaged: async () => false,
  settle: async () => undefined,
};

/** Returns the machine behind a binding; the platform if none is bound. */
export function machineBehind(binding: Fetcher | undefined): Machine {
  if (!binding) return PLATFORM;
  const begun = new Set<string>();
  return {
    async hasObject(className, id) {
      if (!begun.has(id) && (await binding.fetch(`http://machine/objects/${className}/${id}`)).ok) begun.add(id);
      return begun.has(id);
    },
    async isDamaged(className, id) {
      return (await binding.fetch(`http://machine/objects/${className}/${id}/damage`)).ok;
    },
    async settle(keys) {
      const response = await binding.fetch('http://machine/settle', { method: 'POST', body: JSON.stringify(keys) });
      if (!response.ok) throw new Error(`Cannot write through to the disk: ${await response.text()}`);
    },
  };
}
