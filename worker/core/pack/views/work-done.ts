import type { ProductKind } from '../../record/product.ts';
import type { VisitFinding } from '../../record/visit.ts';
import { sentence } from '../../text/sentence.ts';
import type { PackContext } from '../context.ts';

/** Products with a separate log book. */
export type Product = 'airframe' | ProductKind;

/** Returns rectified findings: location and work done. */
export function rectified({ visit }: Pick<PackContext, 'visit'>): { id: string; done: string }[] {
  return (visit.findings ?? [])
    .filter(({ disposition }) => disposition === 'rectified')
    .map((finding) => ({ id: finding.id, done: doneText(finding) }));
}

/** Returns the items that earlier packs left open and this visit closed, by their names there. */
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
 * Returns bulletins and directives complied with on a product in this visit; those of equipment belong to the airframe
 * with it. Work of an earlier visit is in the slip of that visit.
 */
export function bulletinsDone({ visit, fmt }: PackContext, product: Product): string[] {
  const arrived = fmt.local(visit.visit.arrivedAt).slice(0, 10);
  const products: readonly string[] = product === 'airframe' ? ['airframe', 'equipment'] : [product];
  return (visit.bulletins?.items ?? [])
    .filter(({ status }) => status === 'complied' || status === 'recurring')
    .filter(({ applicability, doneOn }) => products.includes(applicability.product) && (doneOn ?? '') >= arrived)
    .map(({ id, subject, method }) => `${id} ${subject}${method ? ` (${method})` : ''}`);
}

/** Returns the fitted parts and materials. The record does not state their product, so they are in the book of the airframe. */
export function partsFitted({ visit }: Pick<PackContext, 'visit'>): string[] {
  return (visit.parts ?? []).map(({ description, partNumber }) => [description, partNumber].filter(Boolean).join(' '));
}
