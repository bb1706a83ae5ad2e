import type { PackDocument } from '../../../core/core.ts';
import { onScreen } from '../../../core/pack/on-screen.ts';
import { sayIn } from '../../../core/text/formatter.ts';
import * as m from '../../../core/text/generated/messages.ts';
import { PAPER_CHOICE, paperSize } from '../../../core/units/paper-size.ts';
import { preferred } from '../accept.ts';
import { json } from '../answer.ts';
import { attachedFiles } from '../attached.ts';
import { entityTag } from '../conditions.ts';
import { type CurrentAssessment, currentAssessment } from '../current-assessment.ts';
import { localeOfDocuments } from '../documents-locale.ts';
import { htmlPage } from '../html-page.ts';
import { HttpProblem } from '../problem.ts';
import type { Call, Operation } from '../route.ts';
import { AssessmentAnswer, DraftDocuments } from '../schemas.ts';
import { PDF_POLICY } from '../security-headers.ts';

const PAPER = { paper: `${PAPER_CHOICE}; what the record says where left out` } as const;

export const getAssessment: Operation = {
  id: 'getAssessment',
  summary: 'The current assessment of the visit',
  description: 'The ETag is the assessmentSha256: name it in If-Match to release what you read here.',
  answers: {
    200: { description: 'Results and findings', content: { 'application/json': AssessmentAnswer }, headers: ['ETag'] },
  },
  async handle(call) {
    const { assessed } = await currentAssessment(call);
    const headers = { ETag: entityTag(assessed.assessmentSha256), 'Cache-Control': 'private, no-store' };
    return json(call.pipeline.assessmentAnswer(assessed) satisfies AssessmentAnswer, 200, headers);
  },
};

export const getDraftPdf: Operation = {
  id: 'getDraftPdf',
  summary: 'Draft of the pack, marked NOT RELEASED on every page',
  query: PAPER,
  answers: { 200: { description: 'The draft', content: { 'application/pdf': 'binary' } } },
  async handle(call) {
    return draftPdf(call, await currentAssessment(call));
  },
};

export const getDraftDocuments: Operation = {
  id: 'getDraftDocuments',
  summary: 'Drafts of all documents of the pack, as HTML',
  description: 'None of them is released. The ETag is that of the assessment.',
  answers: {
    200: { description: 'The documents', content: { 'application/json': DraftDocuments }, headers: ['ETag'] },
  },
  async handle(call) {
    const { assessed, at } = await currentAssessment(call);
    const { assessmentSha256 } = assessed;
    const documents = await call.pipeline.draftDocuments(assessed, at);
    const items = documents.map(({ id, title, html }) => ({ id, title, html }));
    const headers = { ETag: entityTag(assessmentSha256), 'Cache-Control': 'private, no-store' };
    return json({ assessmentSha256, items }, 200, headers);
  },
};

export const getDraftDocument: Operation = {
  id: 'getDraftDocument',
  summary: 'Draft of one document of the pack, as HTML or PDF by Accept',
  query: PAPER,
  answers: {
    200: { description: 'The draft', content: { 'text/html': 'text', 'application/pdf': 'binary' }, headers: ['Vary'] },
  },
  problems: ['not-acceptable'],
  async handle(call) {
    const form = preferred(call.request.headers.get('Accept'), ['text/html', 'application/pdf']);
    if (!form) throw new HttpProblem('not-acceptable', 'A document is text/html or application/pdf');
    const stands = await currentAssessment(call);
    const documents = await call.pipeline.draftDocuments(stands.assessed, stands.at);
    const document = documents.find(({ id }) => id === call.params.document);
    const known = documents.map(({ id }) => id).join(', ');
    if (!document) throw new HttpProblem('not-found', `There is no such document; those of this visit are ${known}`);
    const response = form === 'text/html' ? draftPage(document, documents) : await draftPdf(call, stands, document.id);
    response.headers.set('Vary', 'Accept');
    return response;
  },
};

function draftPage(document: PackDocument, documents: readonly PackDocument[]): Response {
  const locale = localeOfDocuments(documents);
  const view = {
    title: document.title,
    banner: sayIn(locale)(m.visitPack_notReleased),
    bannerKind: 'draft',
    back: '',
    html: onScreen(document.html, { base: '', documents }),
  };
  return htmlPage('document-page', view, { locale });
}

async function draftPdf(call: Call, { assessed, kept, at }: CurrentAssessment, document?: string): Promise<Response> {
  const asked = call.url.searchParams.get('paper');
  const paper = paperSize(asked);
  if (asked !== null && !paper) throw new HttpProblem('malformed-request', `paper must be ${PAPER_CHOICE}`);
  const options = { ...(paper && { paper }), ...(document !== undefined && { document }) };
  const files = await attachedFiles(call, assessed);
  const { bytes } = await call.pipeline.draftPdf(assessed, at, { ...options, files });
  const name = [assessed.record.aircraft.registration.replaceAll(/[^A-Za-z0-9-]/g, ''), kept.visit, document ?? 'pack'];
  return new Response(bytes as Uint8Array<ArrayBuffer>, {
    headers: {
      'Content-Type': 'application/pdf',
      'Content-Disposition': `inline; filename="${name.join('-')}-not-released.pdf"`,
      'Cache-Control': 'private, no-store',
      ...PDF_POLICY,
    },
  });
}
