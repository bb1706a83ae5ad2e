import type { EquipmentKind, Trait } from '../../record/equipment-kind.ts';
import type { Evidence, NotRequiredReason } from '../../record/not-required.ts';
import type { OpenedSystem } from '../../record/opened.ts';
import type { Message } from '../../text/message.ts';
import type { Source } from '../source.ts';
import type { Happening, WorkEvent } from './event.ts';

/** Who may state that something is not required: nobody, who did the work, another of the workshop, the releaser, the releaser with a second person. */
export type Declarer = 'nobody' | 'doer' | 'another' | 'releaser' | 'two-people';

/** A line of the table: what happened, and what must be shown afterwards. */
export interface Obligation {
  /** Never changes. */
  id: string;
  /** What happened, for the printed table. */
  title: Message;
  when: {
    happenings: readonly Happening[];
    /** Kinds of item, or systems opened, of which one must fit; a kind or a trait, if both are given. */
    kinds?: readonly EquipmentKind[];
    traits?: readonly Trait[];
    systems?: readonly OpenedSystem[];
    /** A further condition in words of the trade. */
    only?: (event: WorkEvent) => boolean;
  };
  requires: readonly Evidence[];
  notRequiredBy: Declarer;
  reasons: readonly NotRequiredReason[];
  source: Source;
}

/** Whether a line of the table is about an event. */
export function isAbout({ when }: Obligation, event: WorkEvent): boolean {
  const { happenings, kinds, traits, systems, only } = when;
  if (!happenings.includes(event.happening)) return false;
  const ofKind = kinds !== undefined && event.kind !== undefined && kinds.includes(event.kind);
  const ofTrait = traits?.some((trait) => event.traits.has(trait)) ?? false;
  if ((kinds || traits) && !ofKind && !ofTrait) return false;
  if (systems && !(event.system && systems.includes(event.system))) return false;
  return only?.(event) ?? true;
}
