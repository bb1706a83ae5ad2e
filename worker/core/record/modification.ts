import * as z from 'zod';
import { type FieldText, fieldText } from '../text/field-texts.ts';
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
import { PRODUCTS } from './product.ts';
import { usedParts } from './used-parts.ts';

/** Log books that a modification is entered in; the airframe’s if none is named. */
const LOG_BOOKS = ['airframe', ...PRODUCTS] as const;

const FATES = ['owner', 'scrapped', 'disposal', 'quarantined', 'returned', 'refitted', 'stored'] as const;

const item = (code: string) => reference('equipment-item', 'item_each', 'E07', { code });
const tracedPart = reference('part', 'tracedPart', 'P3').optional();

/** When this line was done, if the whole modification took longer: tests of the item may follow it at once. */
const doneAt = timestamp('change_doneAt', '2026-11-04T14:10:00+01:00', m.modification_change, {
  before: ['finishedAt'],
}).optional();

const taken = {
  item: item('REMOVED_ITEM_NOT_LISTED'),
  serial: line('taken_serial', '11873', 60).optional(),
  mass: mass('taken_mass', 1.9).optional(),
  fate: choice('taken_fate', FATES),
};

const Removed = part('removed', {
  kind: choice('removed_kind', ['removed'] as const),
  ...taken,
  doneAt,
});

const Installed = part('installed', {
  kind: choice('installed_kind', ['installed'] as const),
  id: identifier(['equipment-item'], 'installed_id', 'E32', {
    repeatable: 'INSTALLED_ITEM_ALREADY_LISTED says it, over list and changes together',
  }),
  ...EquipmentFields,
  part: tracedPart,
  doneAt,
});

const Relocated = part(
  'relocated',
  {
    kind: choice('relocated_kind', ['relocated'] as const),
    item: item('RELOCATED_ITEM_NOT_LISTED'),
    arm: arm('relocated_arm', 3350, { of: m.item }),
    lateralArm: EquipmentFields.lateralArm,
    location: line('relocated_location', 'Behind seat bulkhead', 80).optional(),
    doneAt,
  },
  'item',
);

const Replaced = part('replaced', {
  kind: choice('replaced_kind', ['replaced'] as const),
  ...taken,
  by: EquipmentItem,
  part: tracedPart,
  doneAt,
});

/** What is new in an item that stays. */
const UPDATES = ['software', 'firmware', 'database', 'setting', 'repair'] as const;

export const Updated = part(
  'updated',
  {
    kind: choice('updated_kind', ['updated'] as const),
    item: item('UPDATED_ITEM_NOT_LISTED'),
    what: choice('updated_what', UPDATES),
    from: line('updated_from', 'SW 4.2', 60),
    to: line('updated_to', 'SW 5.0', 60),
    reference: line('updated_reference', 'Service letter 12').optional(),
    doneAt,
  },
  'item',
);

const Exchanged = part('exchanged', {
  kind: choice('exchanged_kind', ['exchanged'] as const),
  out: list('exchanged_out', part('exchangedOut', taken, 'item'), { min: 1, max: 60 }),
  in: list('exchanged_in', part('exchangedIn', { ...EquipmentItem.shape, part: tracedPart }), { min: 1, max: 60 }),
  doneAt,
});

export const Change = z
  .discriminatedUnion('kind', [Removed, Installed, Relocated, Replaced, Updated, Exchanged])
  .meta({ ...fieldText('change') });
export type Change = z.infer<typeof Change>;

export const OwedTest = part('owedTest', {
  text: line('owedTest_text', 'Transponder test to the maker’s procedure'),
  result: choice('owedTest_result', ['passed', 'failed', 'not-done', 'after-release'] as const),
  doneAt: timestamp('owedTest_doneAt', '2026-11-05T10:20:00+01:00', m.modification_testModification).optional(),
  by: person('owedTest_by', 'mila', m.modification_tested).optional(),
  reference: line('owedTest_reference', 'Test sheet 3').optional(),
});

const Paper = (text: FieldText, example: string) =>
  part(text, {
    text: line('paper_text', example),
    state: choice('paper_state', ['in-place', 'owed'] as const),
  });

export const Modification = part('modification', {
  id: identifier(['modification'], 'modification_id', 'M1'),
  title: line('modification_title', 'VHF radio and antenna replaced', 100),
  classification: choice('modification_classification', [
    'minor',
    'major',
    'standard-change',
    'maker-approved',
  ] as const),
  classifiedBy: person('modification_classifiedBy', 'mila', m.modification_classified).optional(),
  basis: line('modification_basis', 'Installation manual HR-760 rev. 5').optional(),
  approvalReference: line('modification_approvalReference', 'PMA-2216').optional(),
  approvedOn: pastDate('modification_approvedOn', '2026-10-20', m.modification_approvalModification).optional(),
  description: prose('modification_description', 'Old radio and tray removed. …'),
  finishedAt: timestamp('modification_finishedAt', '2026-11-04T17:30:00+01:00', m.modification_endModification),
  by: list('modification_by', person('modification_by_each', 'mila', m.modification_embodied), {
    min: 1,
    max: 20,
  }),
  inspectedBy: person('modification_inspectedBy', 'jonas', m.modification_inspected).optional(),
  inspectedAt: timestamp(
    'modification_inspectedAt',
    '2026-11-05T08:30:00+01:00',
    m.modification_inspectionModification,
    { after: ['finishedAt'] },
  ).optional(),
  changes: list('modification_changes', Change, { max: 200 }),
  products: list('modification_products', choice('modification_products_each', LOG_BOOKS), { max: 8 }).optional(),
  convertsTo: reference('configuration', 'modification_convertsTo', 'floats').optional(),
  drawings: list('modification_drawings', line('modification_drawings_each', 'LM-117 issue B'), { max: 40 }).optional(),
  placards: list('modification_placards', Paper('modification_placards_each', 'TRANSPONDER: ALT ON FOR TAKE-OFF'), {
    max: 40,
  }).optional(),
  supplement: Paper('modification_supplement', 'Supplement 7: VHF radio').optional(),
  noSupplementNeeded: flag('modification_noSupplementNeeded', false).optional(),
  continuedAirworthiness: list(
    'modification_continuedAirworthiness',
    line('modification_continuedAirworthiness_each', 'Transponder test every 24 months'),
    { max: 40 },
  ).optional(),
  parts: usedParts(),
  flightTest: choice('modification_flightTest', ['none', 'owed', 'done'] as const).optional(),
  tests: list('modification_tests', OwedTest, { max: 60 }).optional(),
});
export type Modification = z.infer<typeof Modification>;

export const Modifications = list('modifications', Modification, { max: 120 });
