import type { Attachment } from '../../record/visit.ts';
import { saidFault } from '../../text/faults.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { DocumentInstance } from '../document.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { concernsLine } from './attached.ts';
import { common, sources } from './common.ts';

/** Returns a divider for each attached document, before its pages. */
export function annexes(context: PackContext): DocumentInstance[] {
  const papers = (context.visit.attachments ?? []).filter(({ kind }) => kind === 'paper');
  return papers.map((paper, index) => {
    const id = `annex-${index + 1}`;
    const fact = context.attachments[paper.sha256];
    const isAppended = fact?.ok === true && fact.kind === 'pdf';
    return {
      id,
      title: context.fmt.text(m.annex_annex, { index: index + 1, paper: paper.title }),
      view: annexView(context, paper, { articleId: id, number: String(index + 1) }),
      ...(isAppended && { appends: paper.sha256 }),
    };
  });
}

function annexView(context: PackContext, paper: Attachment, place: { articleId: string; number: string }): View {
  const { visit, attachments, fmt } = context;
  const fact = attachments[paper.sha256];
  return {
    ...common(context),
    ...place,
    title: paper.title,
    id: paper.id,
    concerns: concernsLine(context, paper),
    receivedBy: nameOf(visit, paper.by),
    sha256: paper.sha256,
    pages: pagesLine(fact, fmt),
    ...sources(fmt.text(m.annex_pagesFollowPaperHanded)),
  };
}

function pagesLine(fact: PackContext['attachments'][string] | undefined, fmt: Formatter): string {
  if (fact === undefined) return fmt.text(m.annex_leftOutFileNot);
  if (!fact.ok) return fmt.text(m.annex_leftOut, { fault: saidFault(fact.detail) });
  if (fact.kind !== 'pdf') return fmt.text(m.annex_leftOutFileNo);
  return fmt.text(m.annex_pagesFollow, { pages: fact.pages });
}
