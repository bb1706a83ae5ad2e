import { FAULTS } from './generated/faults.ts';
import type { Message, Said, Value } from './message.ts';

/** Ids of the faults of a file. They are kept with files, so none is ever changed or removed. */
export type FaultId = keyof typeof FAULTS;

/** Fault of a file, as kept with it: an id and its values, in no language. */
export interface Fault {
  readonly id: FaultId;
  readonly values?: Readonly<Record<string, string | number>>;
}

type ValuesOf<Id extends FaultId> =
  (typeof FAULTS)[Id] extends Message<infer Values> ? { readonly [Name in keyof Values]: string | number } : never;

/**
 * Builds a fault of a file.
 *
 * @example fault('font-not-embedded', { name: 'Serif' })
 */
export function fault<Id extends FaultId>(
  id: Id,
  ...[values]: keyof ValuesOf<Id> extends never ? [] : [values: ValuesOf<Id>]
): Fault {
  // Every value of a fault is text or a number, by the type of `values`.
  return values ? { id, values: values as NonNullable<Fault['values']> } : { id };
}

/** Returns a fault as a value of a message. Earlier editions kept a sentence in English: it stays unchanged. */
export function saidFault(kept: Fault | string): Value {
  if (typeof kept === 'string') return kept;
  const message: Said['message'] | undefined = Object.hasOwn(FAULTS, kept.id) ? FAULTS[kept.id] : undefined;
  return message ? { message, values: kept.values ?? {} } : kept.id;
}
