import type { WorkshopCalls } from './workshop-calls.ts';

/** Results for a workshop that was never created. Nobody has a key of it, so few calls are possible. */
export const NO_WORKSHOP: WorkshopCalls = {
  displayName: async () => null,
  authenticate: async () => null,
  noteUse: async () => undefined,
  sealKeys: async () => null,
  keys: async () => [],
  people: async () => [],
  aircraft: async () => ({ items: [], next: null }),
  wasKept: async () => false,
  revokeKey: async () => null,
  rotateKey: async () => null,
  create: async () => uncreated(),
  addKey: async () => uncreated(),
  takeSealKey: async () => uncreated(),
  takeOverSealKeys: async () => uncreated(),
  enterPerson: async () => uncreated(),
  noteAircraft: async () => uncreated(),
  noteKept: async () => uncreated(),
};

function uncreated(): never {
  throw new Error('Cannot write to a workshop that was not created');
}
