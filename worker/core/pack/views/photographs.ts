import type { Attachment } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import { saidFault } from '../../text/faults.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { concernsLine } from './attached.ts';
import { common, sources } from './common.ts';

const photographsOf = ({ visit }: PackContext): Attachment[] =>
  (visit.attachments ?? []).filter(({ kind }) => kind === 'photograph');

export function hasPhotographs(context: PackContext): boolean {
  return photographsOf(context).length > 0;
}

export function photographsView(context: PackContext): View {
  const { fmt } = context;
  return {
    ...common(context),
    photographs: photographsOf(context).map((photograph) => photographView(context, photograph)),
    ...sources(fmt.text(m.photographs_photographsHandedTurnedUpright)),
  };
}

function photographView(context: PackContext, photograph: Attachment): View {
  const { visit, attachments, fmt } = context;
  const { id, title, sha256, takenAt, by } = photograph;
  const fact = attachments[sha256];
  const isShown = fact?.ok === true && fact.kind !== 'pdf';
  return {
    id,
    title,
    sha256,
    isShown,
    source: imageSource(sha256),
    leftOut:
      fact === undefined
        ? fmt.text(m.photographs_fileNotHanded)
        : fact.ok
          ? fmt.text(m.photographs_fileNoPicture)
          : fmt.value(saidFault(fact.detail)),
    concerns: concernsLine(context, photograph),
    taken: [takenAt ? fmt.timestamp(takenAt) : DASH, by ? nameOf(visit, by) : ''].filter(Boolean).join(', '),
  };
}

/** Returns the source by which typesetter and screen load the picture of an attachment. */
export function imageSource(sha256: string): string {
  return `attachments/${sha256}`;
}
