import * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { EquipmentFields, EquipmentItem } from './equipment.ts';
import {
  arm,
  choice,
  flag,
  identifier,
  line,
  list,
  mass,
  part,
  pastDate,
  person,
  prose,
  reference,
  timestamp,
} from './field.ts';

export const FATES = ['owner', 'scrapped', 'quarantined', 'returned', 'refitted'] as const;

const item = (code: string) => reference('equipment-item', 'Item', 'Line of the equipment list', 'E07', { code });
const part_ = reference('part', 'Part', 'Entry of the parts trace that this item came from', 'P3').optional();

const taken = {
  item: item('REMOVED_ITEM_NOT_LISTED'),
  serial: line('Serial removed', 'Serial number read on the item taken out', '11873', 60).optional(),
  mass: mass('Mass removed', 'Mass taken out, where it was weighed', 1.9).optional(),
  fate: choice('Fate', 'Where the item taken out went', FATES),
};

const Removed = part('Removed', 'An item taken out', {
  kind: choice('Kind', 'What was done', ['removed'] as const),
  ...taken,
});

const Installed = part('Installed', 'An item put in', {
  kind: choice('Kind', 'What was done', ['installed'] as const),
  id: identifier(['equipment-item'], 'Identifier', 'Line number that the item gets', 'E32', {
    repeatable: 'INSTALLED_ITEM_ALREADY_LISTED says it, over list and changes together',
  }),
  ...EquipmentFields,
  part: part_,
});

const Relocated = part(
  'Relocated',
  'An item moved within the aircraft',
  {
    kind: choice('Kind', 'What was done', ['relocated'] as const),
    item: item('RELOCATED_ITEM_NOT_LISTED'),
    arm: arm('New arm', 'Arm after the move', 3350, { of: m.item }),
    location: line('New location', 'Where it sits now', 'Behind seat bulkhead', 80).optional(),
  },
  'item',
);

const Replaced = part('Replaced', 'An item taken out and another put in its place', {
  kind: choice('Kind', 'What was done', ['replaced'] as const),
  ...taken,
  by: EquipmentItem,
  part: part_,
});

export const Change = z
  .discriminatedUnion('kind', [Removed, Installed, Relocated, Replaced])
  .meta({ title: 'Change', description: 'One line of the equipment change' });
export type Change = z.infer<typeof Change>;

export const OwedTest = part('Test owed', 'A test that the modification calls for', {
  text: line('Text', 'What is to be shown', 'Transponder test to the maker’s procedure'),
  result: choice('Result', 'How it went', ['passed', 'failed', 'not-done', 'after-release'] as const),
  doneAt: timestamp(
    'Done',
    'When it was done',
    '2026-11-05T10:20:00+01:00',
    m.modification_testModification,
  ).optional(),
  by: person('By', 'Person who did it', 'mila', m.modification_tested).optional(),
  reference: line('Reference', 'Where its record is', 'Test sheet 3').optional(),
});

const Paper = (title: string, description: string, example: string) =>
  part(title, description, {
    text: line('Text', 'Wording, or title and issue', example),
    state: choice('State', 'Whether it is in place', ['in-place', 'owed'] as const),
  });

export const Modification = part('Modification', 'A change to the aircraft’s configuration', {
  id: identifier(['modification'], 'Number', 'Number of the modification', 'M1'),
  title: line('Title', 'What was changed', 'VHF radio and antenna replaced', 100),
  classification: choice('Classification', 'Class under the regime', [
    'minor',
    'major',
    'standard-change',
    'maker-approved',
  ] as const),
  classifiedBy: person('Classified by', 'Person who decided the class', 'mila', m.modification_classified).optional(),
  basis: line(
    'Basis',
    'Data that the work follows: document and revision',
    'Installation manual HR-760 rev. 5',
  ).optional(),
  approvalReference: line(
    'Approval reference',
    'Reference of the approval, where the class needs one',
    'PMA-2216',
  ).optional(),
  approvedOn: pastDate(
    'Approved on',
    'Date of that approval',
    '2026-10-20',
    m.modification_approvalModification,
  ).optional(),
  description: prose(
    'Description',
    'What was done, so that the next person can follow it',
    'Old radio and tray removed. …',
  ),
  finishedAt: timestamp(
    'Finished',
    'When the work on it was finished',
    '2026-11-04T17:30:00+01:00',
    m.modification_endModification,
  ),
  by: list('Embodied by', 'Who did the work', person('Person', 'A person', 'mila', m.modification_embodied), {
    min: 1,
    max: 20,
  }),
  inspectedBy: person('Inspected by', 'Who inspected it', 'jonas', m.modification_inspected).optional(),
  inspectedAt: timestamp(
    'Inspected',
    'When it was inspected',
    '2026-11-05T08:30:00+01:00',
    m.modification_inspectionModification,
  ).optional(),
  changes: list('Changes', 'Items removed, installed, relocated, replaced', Change, { max: 200 }),
  drawings: list(
    'Drawings',
    'Drawings and photographs by reference',
    line('Drawing', 'Reference and issue', 'LM-117 issue B'),
    { max: 40 },
  ).optional(),
  placards: list(
    'Placards',
    'Placards that it calls for',
    Paper('Placard', 'A placard', 'TRANSPONDER: ALT ON FOR TAKE-OFF'),
    { max: 40 },
  ).optional(),
  supplement: Paper('Manual supplement', 'Supplement to the flight manual', 'Supplement 7: VHF radio').optional(),
  noSupplementNeeded: flag('No supplement needed', 'Stated where nothing changes for the pilot', false).optional(),
  continuedAirworthiness: list(
    'Continued airworthiness',
    'What has to be done to keep it airworthy; “none” is a valid entry',
    line('Instruction', 'An instruction', 'Transponder test every 24 months'),
    { max: 40 },
  ).optional(),
  flightTest: choice('Flight test', 'Whether it has to be shown in flight', [
    'none',
    'owed',
    'done',
  ] as const).optional(),
  tests: list('Tests', 'Tests that it calls for', OwedTest, { max: 60 }).optional(),
});
export type Modification = z.infer<typeof Modification>;

export const Modifications = list('Modifications', 'One record each', Modification, { max: 120 });
