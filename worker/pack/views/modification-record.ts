import { dateOf, printDate, printMoment } from '../../units/calendar.ts';
import type { Modification } from '../../visit/visit.ts';
import type { PackContext } from '../context.ts';
import type { DocumentInstance } from '../document.ts';
import { DASH, nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { changeRows, unitHeads } from './change-rows.ts';
import { common } from './common.ts';

const RESULTS = {
  passed: 'passed',
  failed: 'FAILED',
  'not-done': 'NOT DONE',
  'after-release': 'after release',
} as const;
const FLIGHT_TESTS = { none: 'none needed', owed: 'OWED before normal use', done: 'done' } as const;

/** The id of its article. */
function articleId({ id }: Modification): string {
  return `modification-${id.toLowerCase().replaceAll('.', '-')}`;
}

/** One record for each modification. */
export function modificationRecords(context: PackContext): DocumentInstance[] {
  return (context.visit.modifications ?? []).map((modification) => ({
    id: articleId(modification),
    title: `Modification record ${modification.id}: ${modification.title}`,
    view: modificationView(context, modification),
  }));
}

function modificationView(context: PackContext, modification: Modification): View {
  const { visit, results } = context;
  const lines = results.change.lines.filter((line) => line.modification === modification.id);
  return {
    ...common(context),
    articleId: articleId(modification),
    changeCaption: 'Items out, in and moved; arms from the datum, aft positive; moment = mass × arm',
    ...facts(context, modification),
    ...unitHeads(context),
    hasChanges: lines.length > 0,
    ...changeRows(context, lines),
    fates: listed(fates(modification)),
    hasTests: (modification.tests ?? []).length > 0,
    tests: (modification.tests ?? []).map(({ text, result, doneAt, by, reference }) => ({
      text,
      result: RESULTS[result],
      done: doneAt ? printMoment(doneAt) : DASH,
      by: nameOf(visit, by),
      reference: reference ?? DASH,
    })),
    placards: listed(
      (modification.placards ?? []).map(
        ({ text, state }) => `“${text}”: ${state === 'in-place' ? 'in place' : 'OWED'}`,
      ),
    ),
    instructions: listed(modification.continuedAirworthiness ?? []),
    signatures: [
      signatureOf(visit, modification.by[0], 'Embodied by', printDate(dateOf(modification.finishedAt))),
      signatureOf(
        visit,
        modification.inspectedBy,
        'Inspected by',
        modification.inspectedAt ? printDate(dateOf(modification.inspectedAt)) : DASH,
      ),
    ],
  };
}

const listed = (entries: readonly string[]): string => entries.join('; ') || DASH;

function facts({ visit }: PackContext, modification: Modification): View {
  const { id, title, classification, classifiedBy, basis, approvalReference, approvedOn, description, drawings } =
    modification;
  const { supplement, noSupplementNeeded, flightTest, by } = modification;
  return {
    number: id,
    title,
    classification: `${classification}, decided by ${nameOf(visit, classifiedBy)}`,
    basis: basis ?? DASH,
    approval: approvalReference
      ? `${approvalReference}${approvedOn ? `, ${printDate(approvedOn)}` : ''}`
      : 'none needed for this class',
    description,
    drawings: drawings?.join('; ') ?? DASH,
    supplement: supplement
      ? `${supplement.text}: ${supplement.state === 'in-place' ? 'in the manual' : 'OWED'}`
      : noSupplementNeeded
        ? 'none: nothing changes for the pilot'
        : DASH,
    flightTest: flightTest ? FLIGHT_TESTS[flightTest] : DASH,
    workers: by.map((person) => nameOf(visit, person)).join(', '),
  };
}

function fates({ changes }: Modification): string[] {
  return changes.flatMap((change) =>
    change.kind === 'removed' || change.kind === 'replaced'
      ? [
          `${change.item}${change.serial ? `, serial number ${change.serial}` : ''}: ${change.fate === 'owner' ? 'handed to the owner' : change.fate}`,
        ]
      : [],
  );
}
