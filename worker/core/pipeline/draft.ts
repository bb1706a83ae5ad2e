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

/** Returns the documents of the current state. Nothing in them is released. */
export async function draftDocuments(assessed: Assessed, at: string): Promise<PackDocument[]> {
  return (await packDocuments(draftContext(assessed, at))).documents;
}

export interface DraftOptions {
  /** The only document to print. @default the whole pack */
  document?: string;
  /**
   * @default paper size of the workshop
   */
  paper?: PaperSize;
  /**
   * @default none: documents that need a file state that it is missing
   */
  files?: AttachedFiles;
}

/** Returns a PDF of the current state with a NOT RELEASED mark on every page, and the print findings. */
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
