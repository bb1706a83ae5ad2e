import { flightTestOf } from '../../calc/flights/flights.ts';
import { plainChanges } from '../../calc/mass/equipment-steps.ts';
import type { Modification } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import { articleIds } from '../article-ids.ts';
import type { PackContext } from '../context.ts';
import type { DocumentInstance } from '../document.ts';
import { flightText } from '../flight-text.ts';
import { nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { changeRows, unitHeads } from './change-rows.ts';
import { common } from './common.ts';

const RESULTS = {
  passed: m.modificationRecord_passed,
  failed: m.failed,
  'not-done': m.modificationRecord_notDone,
  'after-release': m.modificationRecord_afterRelease,
} as const;
const FLIGHT_TESTS = {
  none: m.modificationRecord_noneNeeded,
  owed: m.modificationRecord_owedBeforeNormalUse,
  done: m.modificationRecord_done,
} as const;

/** Returns one record for each modification. */
export function modificationRecords(context: PackContext): DocumentInstance[] {
  const { fmt, visit } = context;
  const { modifications = [] } = visit;
  const ids = articleIds(
    'modification',
    modifications.map(({ id }) => id),
  );
  return modifications.map((modification, index) => ({
    id: ids[index] ?? '',
    title: fmt.text(m.modificationRecord_modificationRecord, {
      modification: modification.id,
      modification2: modification.title,
    }),
    view: { ...modificationView(context, modification), articleId: ids[index] ?? '' },
  }));
}

function modificationView(context: PackContext, modification: Modification): View {
  const { visit, results, fmt } = context;
  const lines = results.change.lines.filter((line) => line.modification === modification.id);
  return {
    ...common(context),
    changeCaption: fmt.text(m.modificationRecord_itemsOutMovedArms),
    ...facts(context, modification),
    ...unitHeads(context),
    hasChanges: lines.length > 0,
    ...changeRows(context, lines),
    fates: listed(fates(context, modification)),
    hasTests: (modification.tests ?? []).length > 0,
    tests: (modification.tests ?? []).map(({ text, result, doneAt, by, reference }) => ({
      text,
      result: fmt.text(RESULTS[result]),
      done: doneAt ? fmt.timestamp(doneAt) : DASH,
      by: nameOf(visit, by),
      reference: reference ?? DASH,
    })),
    placards: listed(
      (modification.placards ?? []).map(({ text, state }) =>
        fmt.text(m.modificationRecord_text, {
          text,
          place: state === 'in-place' ? fmt.text(m.modificationRecord_place) : fmt.text(m.modificationRecord_owed),
        }),
      ),
    ),
    instructions: listed(modification.continuedAirworthiness ?? []),
    signatures: [
      ...modification.by.map((by) =>
        signatureOf({ visit, fmt }, by, fmt.text(m.modificationRecord_embodied), fmt.day(modification.finishedAt)),
      ),
      signatureOf(
        { visit, fmt },
        modification.inspectedBy,
        fmt.text(m.inspected),
        modification.inspectedAt ? fmt.day(modification.inspectedAt) : DASH,
      ),
    ],
  };
}

const listed = (entries: readonly string[]): string => entries.join('; ') || DASH;

function facts(context: PackContext, modification: Modification): View {
  const { visit, fmt } = context;
  const { id, title, classification, classifiedBy, basis, approvalReference, approvedOn, description, drawings } =
    modification;
  const { supplement, noSupplementNeeded, by } = modification;
  return {
    number: id,
    title,
    classification: fmt.text(m.modificationRecord_decided, {
      classification: fmt.term(classification),
      visit: nameOf(visit, classifiedBy),
    }),
    basis: basis ?? DASH,
    approval: approvalReference
      ? `${approvalReference}${approvedOn ? `, ${fmt.date(approvedOn)}` : ''}`
      : fmt.text(m.modificationRecord_noneNeededClass),
    description,
    drawings: drawings?.join('; ') ?? DASH,
    supplement: supplement
      ? `${supplement.text}: ${supplement.state === 'in-place' ? fmt.text(m.modificationRecord_manual) : fmt.text(m.modificationRecord_owed)}`
      : noSupplementNeeded
        ? fmt.text(m.modificationRecord_noneNothingChangesPilot)
        : DASH,
    flightTest: flightTestText(context, modification),
    workers: by.map((person) => nameOf(visit, person)).join(', '),
  };
}

/** Returns the state of the flight test with its flight; a test that was flown is done. */
function flightTestText({ visit, fmt }: PackContext, modification: Modification): string {
  const { flightTest } = modification;
  const flight = flightTestOf(visit, modification);
  const state = flight ? 'done' : flightTest;
  if (!state) return DASH;
  return [fmt.text(FLIGHT_TESTS[state]), ...(flight ? [flightText(flight, fmt)] : [])].join(': ');
}

function fates({ fmt }: PackContext, { changes }: Modification): string[] {
  return changes
    .flatMap((change) => plainChanges(change, []))
    .flatMap(({ change }) =>
      change.kind === 'removed' || change.kind === 'replaced'
        ? [
            `${change.item}${change.serial ? fmt.text(m.modificationRecord_serialNumber, { serial: change.serial }) : ''}: ${change.fate === 'owner' ? fmt.text(m.modificationRecord_handedOwner) : fmt.term(change.fate)}`,
          ]
        : [],
    );
}
