import { DASH } from '../../text/dash.ts';
import type { Modification } from '../../visit/visit.ts';
import { phrase } from '../../words/words.ts';
import type { PackContext } from '../context.ts';
import type { DocumentInstance } from '../document.ts';
import { nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { changeRows, unitHeads } from './change-rows.ts';
import { common } from './common.ts';

const RESULTS = {
  passed: phrase`passed`,
  failed: phrase`FAILED`,
  'not-done': phrase`NOT DONE`,
  'after-release': phrase`after release`,
} as const;
const FLIGHT_TESTS = {
  none: phrase`none needed`,
  owed: phrase`OWED before normal use`,
  done: phrase`done`,
} as const;

/** The id of its article. */
function articleId({ id }: Modification): string {
  return `modification-${id.toLowerCase().replaceAll('.', '-')}`;
}

/** One record for each modification. */
export function modificationRecords(context: PackContext): DocumentInstance[] {
  const { say } = context;
  return (context.visit.modifications ?? []).map((modification) => ({
    id: articleId(modification),
    title: say.words`Modification record ${modification.id}: ${modification.title}`,
    view: modificationView(context, modification),
  }));
}

function modificationView(context: PackContext, modification: Modification): View {
  const { visit, results, say } = context;
  const lines = results.change.lines.filter((line) => line.modification === modification.id);
  return {
    ...common(context),
    articleId: articleId(modification),
    changeCaption: say.words`Items out, in and moved; arms from the datum, aft positive; moment = mass × arm`,
    ...facts(context, modification),
    ...unitHeads(context),
    hasChanges: lines.length > 0,
    ...changeRows(context, lines),
    fates: listed(fates(context, modification)),
    hasTests: (modification.tests ?? []).length > 0,
    tests: (modification.tests ?? []).map(({ text, result, doneAt, by, reference }) => ({
      text,
      result: say.term(RESULTS[result]),
      done: doneAt ? say.moment(doneAt) : DASH,
      by: nameOf(visit, by),
      reference: reference ?? DASH,
    })),
    placards: listed(
      (modification.placards ?? []).map(
        ({ text, state }) => say.words`“${text}”: ${state === 'in-place' ? say.words`in place` : say.words`OWED`}`,
      ),
    ),
    instructions: listed(modification.continuedAirworthiness ?? []),
    signatures: [
      signatureOf(visit, modification.by[0], say.words`Embodied by`, say.day(modification.finishedAt)),
      signatureOf(
        visit,
        modification.inspectedBy,
        say.words`Inspected by`,
        modification.inspectedAt ? say.day(modification.inspectedAt) : DASH,
      ),
    ],
  };
}

const listed = (entries: readonly string[]): string => entries.join('; ') || DASH;

function facts({ visit, say }: PackContext, modification: Modification): View {
  const { id, title, classification, classifiedBy, basis, approvalReference, approvedOn, description, drawings } =
    modification;
  const { supplement, noSupplementNeeded, flightTest, by } = modification;
  return {
    number: id,
    title,
    classification: say.words`${say.term(classification)}, decided by ${nameOf(visit, classifiedBy)}`,
    basis: basis ?? DASH,
    approval: approvalReference
      ? `${approvalReference}${approvedOn ? `, ${say.date(approvedOn)}` : ''}`
      : say.words`none needed for this class`,
    description,
    drawings: drawings?.join('; ') ?? DASH,
    supplement: supplement
      ? `${supplement.text}: ${supplement.state === 'in-place' ? say.words`in the manual` : say.words`OWED`}`
      : noSupplementNeeded
        ? say.words`none: nothing changes for the pilot`
        : DASH,
    flightTest: flightTest ? say.term(FLIGHT_TESTS[flightTest]) : DASH,
    workers: by.map((person) => nameOf(visit, person)).join(', '),
  };
}

function fates({ say }: PackContext, { changes }: Modification): string[] {
  return changes.flatMap((change) =>
    change.kind === 'removed' || change.kind === 'replaced'
      ? [
          `${change.item}${change.serial ? say.words`, serial number ${change.serial}` : ''}: ${change.fate === 'owner' ? say.words`handed to the owner` : say.term(change.fate)}`,
        ]
      : [],
  );
}
