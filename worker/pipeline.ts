// The whole way of a record, stage after stage, as edge and command line use it.
export type { ArchiveFacts, AttachmentFact } from './gate/rule.ts';
export { carriedForward } from './pack/carry-forward.ts';
export { loadingFacts } from './pack/loading-facts.ts';
export { nextDue } from './pack/next-due.ts';
export type { PackDocument } from './pack/pack-documents.ts';
export type { PackSummary } from './pack/summary.ts';
export { type Assessed, assess } from './pipeline/assess.ts';
export { assessmentAnswer } from './pipeline/assessment-answer.ts';
export { draftDocuments, draftPdf } from './pipeline/draft.ts';
export type { AttachedFiles } from './pipeline/print-pack.ts';
export { type Attestation, type PackPlace, type SealedPack, seal } from './pipeline/seal.ts';
export { cleanImage, INSPECTION, inspectAttachment } from './print/index.ts';
