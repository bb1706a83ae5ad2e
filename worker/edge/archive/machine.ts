/**
 * What the one machine does for an archive that lives on it, and the platform does by itself: it knows which objects were ever begun,
 * because merely asking one makes its file; and it writes files through to the disk before the ledger names them.
 */
export interface Machine {
  /** Whether an object with this identifier was ever begun. */
  hasObject(className: 'Ledger' | 'Workshop', id: string): Promise<boolean>;
  /** Whether the database of an object is damaged: asked only where the object does not answer. */
  isDamaged(className: 'Ledger' | 'Workshop', id: string): Promise<boolean>;
  /** Comes back once the files under these keys of the bucket outlast a power cut. */
  settle(keys: readonly string[]): Promise<void>;
}

/** On the platform an object that was only asked keeps nothing, and what was put is safe. */
const PLATFORM: Machine = {
  hasObject: async () => true,
  isDamaged: async () => false,
  settle: async () => undefined,
};

/** The machine behind a binding, or the platform where none is bound. */
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
