import { FAULTS } from './generated/faults.ts';
import type { Message, Said, Value } from './message.ts';

/** The ids of what can be the matter with a file. They are kept with files, so none is ever changed or taken away. */
export type FaultId = keyof typeof FAULTS;

/** What is the matter with a file, as it is kept beside it: an id and its values, in no language. */
export interface Fault {
  readonly id: FaultId;
  readonly values?: Readonly<Record<string, string | number>>;
}

type ValuesOf<Id extends FaultId> =
  (typeof FAULTS)[Id] extends Message<infer Values> ? { readonly [Name in keyof Values]: string | number } : never;

/**
 * A fault of a file.
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

/** A fault as a value of a message. Editions before this one kept a sentence in English: it stays as it is. */
export function saidFault(kept: Fault | string): Value {
  if (typeof kept === 'string') return kept;
  const message: Said['message'] | undefined = Object.hasOwn(FAULTS, kept.id) ? FAULTS[kept.id] : undefined;
  return message ? { message, values: kept.values ?? {} } : kept.id;
}
