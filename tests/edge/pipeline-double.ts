import type { Assessed, AssessmentAnswer } from '../../worker/core/core.ts';
import { sha256 } from '../../worker/core/pack/digest.ts';
import { picturesIn } from '../../worker/core/pack/on-screen.ts';
import type { Pipeline } from '../../worker/edge/http/route.ts';

/** A record as the double understands it. */
export interface SmallRecord {
  aircraft: { registration: string };
  note?: string;
  isBlocked?: boolean;
}

export const BLOCKING = {
  code: 'TEST_BLOCKS',
  severity: 'blocks',
  pointer: '/note',
  sentence: 'Cannot release: the test says so',
  remedy: 'Do not block',
  source: 'this test',
  data: {},
} as const;

const utf8 = (text: string) => new TextEncoder().encode(text);

const recordIn = (assessed: Assessed) => assessed.record as unknown as SmallRecord;

/** Stands in for the pure stages, so that tests of the edge say in a few words what those answer. */
export const pipelineDouble: Pipeline = {
  async assess(input) {
    const record = input as Partial<SmallRecord> | null;
    if (typeof record?.aircraft?.registration !== 'string') {
      const place = { severity: 'blocks', pointer: '/aircraft' } as const;
      const issue = {
        code: 'RECORD_FIELD_MISSING',
        ...place,
        sentence: 'aircraft must be given',
        remedy: 'Add it',
      } as const;
      return { ok: false, issues: [issue] };
    }
    const recordSha256 = await sha256(JSON.stringify(record));
    const assessmentSha256 = await sha256(`assessment of ${recordSha256}`);
    const findings = record.isBlocked ? [BLOCKING] : [];
    const assessed = {
      record,
      recordSha256,
      postedSha256: recordSha256,
      assessmentSha256,
      findings,
      isReleasable: !record.isBlocked,
      attachments: {},
      visit: {
        units: { mass: 'kg', arm: 'mm', volume: 'l' },
        visit: { arrivedAt: '2026-11-03T09:10:00+01:00' },
      },
    };
    return { ok: true, assessed: assessed as unknown as Assessed };
  },
  carriedForward: () => undefined,
  standingAfter: (_, { pack, sha256 }, { open, readings }) => ({ pack, sha256, sections: {}, open, readings }),
  nextRecord: ({ pack, sha256: of, sections }) => ({
    ...{ pack, record: { standing: { pack, sha256: of } }, lacks: [], sections, open: [] },
    readings: { meters: [] },
  }),
  provedFile: async () => undefined,
  proofInPack: () => undefined,
  firstRecord: (registration) => ({
    record: { aircraft: { registration } },
    lacks: [],
    hints: { products: [], axes: [], requires: { envelope: false, lateral: false } },
  }),
  dueItems: () => [],
  factsToday: () => ({ loading: undefined, tighter: [] }),
  tighterText: ({ name }) => name,
  nextDue: () => [],
  INSPECTION: 4,
  cleanImage: (bytes) => bytes,
  openAfterPack: (past) => past,
  flownUntil: () => undefined,
  isOfWeighingAlone: () => false,
  openDigest: async (packs) => sha256(JSON.stringify(packs)),
  timeLeft: (items) => items.map((item) => ({ ...item, isOverdue: false, isWithinTolerance: false })),
  isOwnMarkup: (html) => html.startsWith('<article'),
  picturesShown: picturesIn,
  inspectAttachment: async () => ({
    ok: true,
    kind: 'pdf',
    pages: 1,
    obstacles: [],
    work: { unpackedBytes: 0, objects: 0, tokens: 0 },
  }),
  assessmentAnswer: ({ findings, isReleasable }) => ({ findings, isReleasable }) as AssessmentAnswer,
  draftDocuments: async (assessed) => [
    {
      id: 'owner-summary',
      title: 'Summary',
      html: `<article id="owner-summary"><h1>${recordIn(assessed).note}</h1></article>`,
    },
  ],
  async draftPdf(_assessed, _at, options) {
    return { bytes: utf8(`%PDF draft ${options?.document ?? 'pack'} ${options?.paper}`), findings: [] };
  },
  async seal(assessed, { by, at }, place) {
    if (!assessed.isReleasable) return { ok: false, findings: assessed.findings };
    const pdf = utf8(`%PDF ${place.pack} of ${assessed.recordSha256} at ${at}`);
    const recordJson = JSON.stringify(assessed.record);
    const manifestJson = JSON.stringify({ place, at });
    const { registration } = recordIn(assessed).aircraft;
    const { pack, number, issue, visit } = place;
    const summary = {
      registration,
      pack,
      number,
      issue,
      visit,
      issuedAt: at,
      releasedBy: by,
      regime: 'generic',
      emptyMassKg: 301.5,
      emptyArmMm: null,
      supersedes: place.supersedes ?? null,
      findings: { cautions: 0, notes: 0 },
    };
    const html = `<article id="owner-summary"><h1>${recordIn(assessed).note}</h1></article>`;
    const documents = [
      { id: 'owner-summary', title: 'Summary', html },
      {
        id: 'weighing-report',
        title: 'Weighing report',
        html: '<article id="weighing-report"><h1>Weighing</h1></article>',
      },
    ];
    const factsJson = JSON.stringify({
      summary,
      sealedBy: null,
      open: { over: '', items: [], readings: { meters: [] } },
    });
    const [pdfSha256, manifestSha256] = await Promise.all([sha256(pdf), sha256(manifestJson)]);
    const digests = { pdfSha256, manifestSha256, factsSha256: await sha256(factsJson) };
    return { ok: true, sealed: { pdf, recordJson, manifestJson, factsJson, ...digests, documents, summary } };
  },
};
