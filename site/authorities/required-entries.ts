/** An entry that a rule requires in a maintenance record, and where the record and the pack have it. */
export interface RequiredEntry {
  /** Paragraph of the rule; only paragraphs whose words were read. */
  rule: string;
  /** What it requires, in short. */
  entry: string;
  /** Fields of the record, `[]` behind the name of a list. */
  fields: readonly string[];
  /** Documents of the pack, by their template. */
  documents: readonly string[];
}

/** Rules with the entries that each requires. */
export const REQUIRED_ENTRIES: Readonly<Record<string, readonly RequiredEntry[]>> = {
  '14 CFR 43.9(a), maintenance and alterations': [
    {
      rule: '43.9(a)(1)',
      entry: 'Description of the work, or reference to acceptable data',
      fields: ['visit.summary', 'modifications[].description', 'modifications[].basis', 'inspection.tasks[].reference'],
      documents: ['modification-record', 'inspection-record', 'log-book-inserts'],
    },
    {
      rule: '43.9(a)(2)',
      entry: 'Date of completion',
      fields: ['visit.workEndedAt'],
      documents: ['release-statement', 'log-book-inserts'],
    },
    {
      rule: '43.9(a)(3)',
      entry: 'Name of the person who did the work, if another',
      fields: ['modifications[].by[]', 'inspection.tasks[].by', 'signOffs[].by'],
      documents: ['modification-record', 'inspection-record', 'release-statement'],
    },
    {
      rule: '43.9(a)(4)',
      entry: 'Signature, certificate number and kind of certificate of the person who approves',
      fields: ['release.by', 'people[].authorisation', 'people[].capacity'],
      documents: ['release-statement', 'log-book-inserts'],
    },
  ],
  '14 CFR 43.11, inspections': [
    {
      rule: '43.11(a)(1)',
      entry: 'Type and extent of the inspection',
      fields: ['inspection.kind', 'inspection.extent', 'inspection.tasks[].text'],
      documents: ['inspection-record', 'log-book-inserts'],
    },
    {
      rule: '43.11(a)(2)',
      entry: 'Date of the inspection, and total time in service',
      fields: ['visit.workEndedAt', 'meters.readings[].outHours', 'meters.readings[].offsetHours'],
      documents: ['release-statement', 'log-book-inserts'],
    },
    {
      rule: '43.11(a)(3)',
      entry: 'Signature, certificate number and kind of certificate of the person who approves',
      fields: ['release.by', 'people[].authorisation', 'people[].capacity'],
      documents: ['release-statement', 'log-book-inserts'],
    },
    {
      rule: '43.11(a)(4)',
      entry: 'Statement that the aircraft was inspected and found airworthy',
      fields: ['release.statement', 'release.further[].statement', 'inspection.kind'],
      documents: ['release-statement', 'log-book-inserts'],
    },
    {
      rule: '43.11(a)(7)',
      entry: 'Inspection programme, and the part of it that was done',
      fields: ['inspection.programme', 'inspection.tasks[].zone'],
      documents: ['inspection-record'],
    },
    {
      rule: '43.11(b)',
      entry: 'List of discrepancies for the owner',
      fields: ['findings[].text', 'findings[].disposition', 'findings[].deferral.ownerInformed'],
      documents: ['findings', 'owner-summary'],
    },
  ],
  'Part-ML, records and release': [
    {
      rule: 'ML.A.305(d)(6), AMC ML.A.403',
      entry: 'Current list of deferred maintenance; a defect keeps its first date',
      fields: ['findings[].deferral.untilDate', 'findings[].foundAt', 'findings[].deferral.firstDeferredOn'],
      documents: ['findings', 'release-statement'],
    },
    {
      rule: 'AMC M.A.801(e), a sister text',
      entry: 'Statement of the release, and a unique reference to the work pack',
      fields: ['release.statement', 'release.scope'],
      documents: ['release-statement', 'cover'],
    },
    {
      rule: 'ML.A.801(b)',
      entry: 'Certifying staff, or pilot-owner',
      fields: ['release.by', 'people[].capacity', 'people[].authorisation'],
      documents: ['release-statement'],
    },
    {
      rule: 'ML.A.903(a)(4)',
      entry: 'Defects corrected, or deferred in a controlled manner',
      fields: ['findings[].closedBy', 'findings[].closedAt', 'findings[].deferral.by'],
      documents: ['findings'],
    },
    {
      rule: 'ML.A.903(a)(5)',
      entry: 'Directives applied and registered',
      fields: ['bulletins.items[].status', 'bulletins.items[].method', 'bulletins.items[].doneOn'],
      documents: ['bulletins'],
    },
    {
      rule: 'ML.A.903(a)(6)',
      entry: 'Modifications registered, with their approval',
      fields: ['modifications[].classification', 'modifications[].approvalReference'],
      documents: ['modification-record'],
    },
    {
      rule: 'ML.A.903(a)(7)',
      entry: 'Life-limited components, within their life',
      fields: ['lives.items[].interval', 'lives.items[].lastDone', 'lives.items[].product.serial'],
      documents: ['due-list', 'component-cards'],
    },
    {
      rule: 'ML.A.903(a)(9)',
      entry: 'Mass and balance statement for the configuration, and valid',
      fields: ['weighing.weighedAt', 'baseline.weighedOn', 'modifications[].changes[]'],
      documents: ['weight-and-balance-schedule', 'equipment-list'],
    },
  ],
  'NCO.POL.105, mass and balance': [
    {
      rule: 'NCO.POL.105(a)',
      entry: 'Mass and centre of gravity by actual weighing',
      fields: ['weighing.weighedAt', 'weighing.points[].readings[]', 'weighing.fuelState'],
      documents: ['weighing-report', 'weight-and-balance-schedule'],
    },
    {
      rule: 'NCO.POL.105(a)',
      entry: 'Accumulated effect of modifications',
      fields: ['modifications[].changes[]', 'baseline.history[].mass', 'baseline.history[].moment'],
      documents: ['equipment-list', 'weight-and-balance-schedule'],
    },
    {
      rule: 'NCO.POL.105(b)',
      entry: 'Who weighed: manufacturer or approved organisation',
      fields: ['workshop.name', 'workshop.approval', 'weighing.by'],
      documents: ['cover', 'weighing-report'],
    },
  ],
};
