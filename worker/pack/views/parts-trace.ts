import { printDate } from '../../units/calendar.ts';
import { printNumber } from '../../units/rounding.ts';
import type { Part } from '../../visit/visit.ts';
import type { PackContext } from '../context.ts';
import { DASH, nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';

const KINDS = {
  'release-certificate': 'release certificate',
  'conformity-certificate': 'certificate of conformity',
  'maker-statement': 'maker’s statement',
  'owner-declaration': 'declaration of the maker of the part',
  'standard-part': 'standard part',
} as const;

export function partsTraceView(context: PackContext): View {
  const parts = context.visit.parts ?? [];
  return {
    ...common(context),
    count: String(parts.length),
    parts: parts.map((part) => partRow(context, part)),
    ...sources('Each line names the paper that came with the part; the papers stay with the workshop’s copy.'),
  };
}

function partRow({ visit }: PackContext, part: Part): Record<string, string> {
  const { releaseDocument, shelfLifeUntil, fittedOn } = part;
  return {
    id: part.id,
    description: part.description,
    partNumber: part.partNumber ?? DASH,
    serial: part.serialOrBatch ?? DASH,
    quantity: printNumber(part.quantity, Number.isInteger(part.quantity) ? 0 : 1),
    condition: part.condition ?? DASH,
    paper: releaseDocument ? `${KINDS[releaseDocument.kind]} ${releaseDocument.reference}` : 'NONE',
    shelf: shelfLifeUntil ? printDate(shelfLifeUntil) : DASH,
    fitted: fittedOn ? printDate(fittedOn) : DASH,
    receivedBy: nameOf(visit, part.receivedBy),
  };
}
