import type { Finding } from '../gate/finding.ts';
import { type PackContext, packContext } from '../pack/context.ts';
import { type PackDocument, packDocuments } from '../pack/pack-documents.ts';
import type { PaperSize } from '../units/paper-size.ts';
import type { Assessed } from './assess.ts';
import { printFindings } from './print-finding.ts';
import { type AttachedFiles, printPack } from './print-pack.ts';

function draftContext(assessed: Assessed, at: string): PackContext {
  return packContext(assessed, { of: { draftAt: at }, recordSha256: assessed.recordSha256 });
}

/** What stands now, as documents. Nothing in them is released. */
export async function draftDocuments(assessed: Assessed, at: string): Promise<PackDocument[]> {
  return (await packDocuments(draftContext(assessed, at))).documents;
}

export interface DraftOptions {
  /** One document alone. @default the whole pack */
  document?: string;
  /** @default what the workshop prints on */
  paper?: PaperSize;
  /** @default none: what needs a file says that it is missing */
  files?: AttachedFiles;
}

/** What stands now, as a PDF with a NOT RELEASED mark on every page; and what could not be printed. */
export async function draftPdf(
  assessed: Assessed,
  at: string,
  options: DraftOptions = {},
): Promise<{ bytes: Uint8Array; findings: Finding[] }> {
  const context = draftContext(assessed, at);
  const all = (await packDocuments(context, { alone: options.document })).documents;
  const documents = options.document === undefined ? all : all.filter(({ id }) => id === options.document);
  const printed = await printPack(context, documents, {
    recordJson: assessed.recordJson,
    paper: options.paper,
    files: options.files ?? {},
  });
  return { bytes: printed.bytes, findings: printFindings(printed.findings, assessed, context.fmt) };
}
