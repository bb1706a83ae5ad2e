import { usesOf } from '../../record/part-uses.ts';
import type { Part } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';

const KINDS = {
  'release-certificate': m.partsTrace_releaseCertificate,
  'conformity-certificate': m.partsTrace_certificateConformity,
  'maker-statement': m.partsTrace_makerSStatement,
  'owner-declaration': m.partsTrace_declarationMakerPart,
  'standard-part': m.partsTrace_standardPart,
} as const;

export function partsTraceView(context: PackContext): View {
  const { fmt } = context;
  const parts = context.visit.parts ?? [];
  return {
    ...common(context),
    count: String(parts.length),
    parts: parts.map((part) => partRow(context, part)),
    ...sources(fmt.text(m.partsTrace_eachLineNamesPaper)),
  };
}

function partRow({ visit, fmt }: PackContext, part: Part): Record<string, string> {
  const { releaseDocument, shelfLifeUntil, fittedOn } = part;
  return {
    id: part.id,
    description: part.description,
    partNumber: part.partNumber ?? DASH,
    serial: part.serialOrBatch ?? DASH,
    quantity: fmt.plain(part.quantity, Number.isInteger(part.quantity) ? 0 : 1),
    condition: part.condition ? fmt.term(part.condition) : DASH,
    paper: [paperOf(fmt, releaseDocument), part.supplier].filter(Boolean).join(', '),
    shelf: shelfLifeUntil ? fmt.date(shelfLifeUntil) : DASH,
    fitted: [fittedOn && fmt.date(fittedOn), ...usesOf(visit, part.id)].filter(Boolean).join(', ') || DASH,
    receivedBy: nameOf(visit, part.receivedBy),
  };
}

function paperOf(fmt: Formatter, paper: Part['releaseDocument']): string {
  return paper ? `${fmt.text(KINDS[paper.kind])} ${paper.reference}` : fmt.text(m.none2);
}
