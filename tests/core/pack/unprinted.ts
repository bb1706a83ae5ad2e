import { type Assessed, assess, seal } from '../../../worker/core/core.ts';
import { figuresOf } from '../../../worker/core/gate/accepted-figures.ts';
import type { ReleasedVisit } from '../../../worker/core/gate/release.ts';
import { type PackContext, packContext } from '../../../worker/core/pack/context.ts';
import { packDocuments } from '../../../worker/core/pack/pack-documents.ts';
import { answeredResults } from '../../../worker/core/pipeline/answered-results.ts';
import { printPack } from '../../../worker/core/pipeline/print-pack.ts';
import { FIXTURE_FILES } from '../../fixture-files.ts';
import { lengtheningLocale } from '../text/lengthening.ts';
import type { AnyVisit } from './any-visit.ts';

/** What went wrong in printing a visit. */
export interface Unprinted {
  /** What does not fit a page, and words in a document that nobody wrote, such as `undefined`. */
  findings: object[];
  wasReleased: boolean;
  /** The pack, if it fits. */
  pdf: Uint8Array;
}

const NOTHING = new Uint8Array();

const { facts, files } = FIXTURE_FILES;

/** What cannot be printed of a visit: nothing, whether or not the gate would release it. */
export async function unprinted({ record, at, isDraft, isGenerated }: AnyVisit): Promise<Unprinted> {
  const assessed = await acknowledged(record, at);
  const strange = [...strangeNumbers(answeredResults(assessed))];
  const by = (record.release as { by: string }).by;
  if (!isDraft && !isGenerated && assessed.isReleasable) {
    const place = { pack: 'Q-ANY-P1-1', number: 1, issue: 1, visit: 'any', before: [] };
    const attestation = { by, knowsOfNoHazard: true, at, read: assessed.assessmentSha256 };
    const sealed = await seal(assessed, attestation, place, files);
    if (!sealed.ok) return { findings: [...sealed.findings], wasReleased: true, pdf: NOTHING };
    const { documents, pdf } = sealed.sealed;
    return { findings: [...strange, ...strangeWords(documents)], wasReleased: true, pdf };
  }
  const context = isDraft
    ? contextOf(assessed, { draftAt: at }, isGenerated)
    : asReleased(assessed, by, at, isGenerated);
  const { documents } = await packDocuments(context);
  const { recordJson } = assessed;
  const { findings, bytes } = await printPack(context, documents, { recordJson, files });
  return { findings: [...findings, ...strange, ...strangeWords(documents)], wasReleased: false, pdf: bytes };
}

/** The record assessed with every caution accepted. */
async function acknowledged(record: Record<string, unknown>, at: string): Promise<Assessed> {
  const release = record.release as { by: string };
  const first = await assessedOnly({ ...record, release: { ...release, acknowledgements: undefined } }, at);
  const codes = [...new Set(first.findings.filter(({ severity }) => severity === 'caution').map(({ code }) => code))];
  if (codes.length === 0 || first.findings.some(({ severity }) => severity === 'blocks')) return first;
  const reason = 'Looked at and accepted, because nothing else is possible here';
  const acknowledgements = codes.map((code) => ({
    ...{ code, by: release.by, ground: 'not-possible', reason },
    figures: figuresOf(first.findings, code),
  }));
  return assessedOnly({ ...record, release: { ...release, acknowledgements } }, at);
}

async function assessedOnly(record: object, at: string): Promise<Assessed> {
  const outcome = await assess(JSON.parse(JSON.stringify(record)), at, { attachments: facts });
  if (!outcome.ok) throw new Error(`The record must fit the schema: ${JSON.stringify(outcome.issues.slice(0, 3))}`);
  return outcome.assessed;
}

type Of = Parameters<typeof packContext>[1]['of'];

function contextOf(assessed: Assessed, of: Of, isGenerated: boolean, released?: ReleasedVisit): PackContext {
  const { recordSha256 } = assessed;
  return packContext(assessed, {
    ...{ of, recordSha256 },
    ...(released && { released }),
    ...(isGenerated && { locale: lengtheningLocale() }),
  });
}

/** A pack as it would look if the gate let it through: what holds for these holds for all that it does. */
function asReleased(assessed: Assessed, by: string, at: string, isGenerated: boolean): PackContext {
  const { visit, regime } = assessed;
  const releasedBy = visit.people.find(({ id }) => id === by) ?? visit.people[0];
  const released = {
    ...assessed,
    release: visit.release,
    releasedBy,
    statement: regime.statements[0],
    further: [],
    releasedAt: at,
  };
  const identity = {
    pack: 'Q-ANY-P1-1',
    issue: '1',
    issuedAt: at,
    visit: 'any',
    previous: undefined,
    supersedes: undefined,
    sealedBy: undefined,
  };
  return contextOf(assessed, identity, isGenerated, released as unknown as ReleasedVisit);
}

/** Words that stand in a document because something was not there, or not a number. */
const STRANGE = /.{0,40}(\bundefined\b|NaN|Infinity|∞|\[object).{0,20}/;

function strangeWords(documents: readonly { id: string; html: string }[]): object[] {
  return documents.flatMap(({ id, html }) => {
    const found = STRANGE.exec(html);
    return found ? [{ code: 'STRANGE_WORD', document: id, context: found[0] }] : [];
  });
}

/** Results that are no numbers, which no reader of the response could take. */
function* strangeNumbers(value: unknown, path = ''): Generator<object> {
  if (typeof value === 'number' && !Number.isFinite(value))
    yield { code: 'STRANGE_NUMBER', path, value: String(value) };
  if (typeof value !== 'object' || value === null) return;
  for (const [key, within] of Object.entries(value)) yield* strangeNumbers(within, `${path}/${key}`);
}
