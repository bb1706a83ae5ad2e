import type { VisitFinding } from '../../record/visit.ts';
import { sentence } from '../../text/sentence.ts';
import type { PackContext } from '../context.ts';

/** The products that have a log book of their own. */
export type Product = 'airframe' | 'engine' | 'propeller';

/** Findings that were put right: of which place, and what was done. */
export function rectified({ visit }: Pick<PackContext, 'visit'>): { id: string; done: string }[] {
  return (visit.findings ?? [])
    .filter(({ disposition }) => disposition === 'rectified')
    .map((finding) => ({ id: finding.id, done: doneText(finding) }));
}

/** What earlier packs had left open and this visit closed, by its names there. */
export function closedSince({ visit, results }: Pick<PackContext, 'visit' | 'results'>): string[] {
  return (visit.carried ?? []).flatMap(({ item, answer, reason }) => {
    const open = results.open.before.find((before) => before.item === item);
    return answer === 'closed' && open ? [`${item} ${open.text}${reason ? ` (${reason})` : ''}`] : [];
  });
}

function doneText({ place, action, text }: VisitFinding): string {
  return `${place}: ${sentence(action ?? text)}`;
}

/**
 * Bulletins and directives that were done in this visit on a product; those of equipment belong to the airframe that it is fitted
 * to. What was done on an earlier visit stands in the slip of that one.
 */
export function bulletinsDone({ visit, fmt }: PackContext, product: Product): string[] {
  const arrived = fmt.local(visit.visit.arrivedAt).slice(0, 10);
  const products: readonly string[] = product === 'airframe' ? ['airframe', 'equipment'] : [product];
  return (visit.bulletins?.items ?? [])
    .filter(({ status }) => status === 'complied' || status === 'recurring')
    .filter(({ applicability, doneOn }) => products.includes(applicability.product) && (doneOn ?? '') >= arrived)
    .map(({ id, subject, method }) => `${id} ${subject}${method ? ` (${method})` : ''}`);
}

/** Parts and materials that were fitted. The record does not say to which product, so they stand in the book of the airframe. */
export function partsFitted({ visit }: Pick<PackContext, 'visit'>): string[] {
  return (visit.parts ?? []).map(({ description, partNumber }) => [description, partNumber].filter(Boolean).join(' '));
}
