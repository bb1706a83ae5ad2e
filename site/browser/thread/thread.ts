// Core on its own thread, so that typing stays fluid. It sends out only what the page requests.

import { type Assessed, assess, draftDocuments, draftPdf, inspectAttachment } from '../../../worker/core/core.ts';
import type { AttachmentFact } from '../../../worker/core/gate/rule.ts';
import { errorMessage } from '../error-message.ts';
import { comparisonOf } from './comparison.ts';
import { figuresOf } from './figures.ts';
import type { ComparisonGroup, MomentRecord, PageFiles, Question, Reply, Sheet } from './protocol.ts';

// One script serves the record check, the weighing form and the inspector’s page, and only the newest question gets
// a response. Findings take a few ms for a record of 200 kB, a preview a hundred.

/** Used part of the scope of a worker. */
interface WorkerScope {
  addEventListener(type: 'message', listener: (event: { data: { id: number; question: Question } }) => void): void;
  postMessage(message: { id: number; reply: Reply }): void;
}

const surroundings = globalThis as unknown as WorkerScope;

/** Facts about each file; a file is read only once. */
const seen = new Map<string, AttachmentFact>();

surroundings.addEventListener('message', ({ data: { id, question } }) => {
  answer(question)
    .catch((error: unknown): Reply => ({ failure: errorMessage(error) }))
    .then((reply) => surroundings.postMessage({ id, reply }));
});

async function answer(question: Question): Promise<Reply> {
  if (question.want === 'comparison') return { comparison: await compared(question.before, question.now) };
  const { want, record, at, files } = question;
  const outcome = await assess(record, at, { attachments: await factsOf(files) });
  if (!outcome.ok) return { sheet: { ...NOTHING, findings: outcome.issues } };
  const { assessed } = outcome;
  if (want === 'sheet') return { sheet: await sheetOf(assessed, at) };
  const fit = Object.entries(files).filter(([digest]) => assessed.attachments[digest]?.ok);
  const { bytes } = await draftPdf(assessed, at, { files: Object.fromEntries(fit) });
  return { pdf: bytes as Uint8Array<ArrayBuffer> };
}

/** Compares two records; returns no groups if one of them does not fit the schema. */
async function compared(before: MomentRecord, now: MomentRecord): Promise<ComparisonGroup[]> {
  const [first, second] = await Promise.all([assess(before.record, before.at, {}), assess(now.record, now.at, {})]);
  return first.ok && second.ok ? comparisonOf(first.assessed, second.assessed) : [];
}

const NOTHING: Sheet = { isReadable: false, isReleasable: false, findings: [], figures: [], documents: [] };

async function sheetOf(assessed: Assessed, at: string): Promise<Sheet> {
  const { findings, isReleasable } = assessed;
  const documents = await draftDocuments(assessed, at);
  return {
    isReadable: true,
    isReleasable,
    findings: findings.map(({ severity, code, pointer, sentence, remedy, source, follows, acknowledgedBy }) => {
      return { severity, code, pointer, sentence, remedy, source, follows, acknowledgedBy };
    }),
    figures: figuresOf(assessed),
    documents: documents.map(({ id, title, html }) => ({ id, title, html })),
  };
}

async function factsOf(files: PageFiles): Promise<Record<string, AttachmentFact>> {
  const facts: Record<string, AttachmentFact> = {};
  for (const [digest, bytes] of Object.entries(files)) {
    const fact = seen.get(digest) ?? (await factOf(bytes));
    seen.set(digest, fact);
    facts[digest] = fact;
  }
  return facts;
}

async function factOf(bytes: Uint8Array): Promise<AttachmentFact> {
  const inspected = await inspectAttachment(bytes);
  return inspected.ok ? { ...inspected, bytes: bytes.length } : inspected;
}
