/** Place in a document that a pointer refers to: the document, and words printed there. */
export interface Place {
  document: string;
  words: string | undefined;
}

/** Document that shows each part of a record. Parts without a document are in the release statement. */
const DOCUMENTS: Readonly<Record<string, string>> = {
  aircraft: 'weight-and-balance-schedule',
  antennas: 'antenna-record',
  asFound: 'equipment-list',
  attachments: 'photographs',
  baseline: 'equipment-list',
  certificates: 'due-list',
  bulletins: 'bulletins',
  carried: 'findings',
  compass: 'compass-card',
  controls: 'inspection-record',
  electrical: 'electrical-load-analysis',
  engineRuns: 'engine-runs',
  findings: 'findings',
  flights: 'flights-and-measurements',
  inspection: 'inspection-record',
  lives: 'due-list',
  measurements: 'flights-and-measurements',
  meters: 'due-list',
  parts: 'parts-trace',
  surveillance: 'radio-and-surveillance-record',
  weighing: 'weighing-report',
  wiring: 'wiring-schedule',
  worksheet: 'inspection-record',
};
const OTHERS = 'release-statement';

/** Fields by which a document names a thing, in order of preference. */
const NAMES = ['mark', 'id', 'serial', 'name', 'task', 'pin'];

/** @param documents identifiers of the documents of the visit */
export function placeOf(pointer: string, record: unknown, documents: readonly string[]): Place {
  const steps = pointer.split('/').slice(1);
  const [part = ''] = steps;
  const words = nameAt(record, steps);
  const own = part === 'modifications' ? modificationAt(record, steps) : (DOCUMENTS[part] ?? OTHERS);
  const document = documents.find((id) => id === own) ?? documents.find((id) => id === OTHERS) ?? documents[0] ?? '';
  return { document, words };
}

/** Returns the identifier of the document of a modification; each has one, named after it. */
function modificationAt(record: unknown, steps: readonly string[]): string {
  return `modification-${nameAt(record, steps.slice(0, 2)) ?? ''}`.toLowerCase().replaceAll('.', '-');
}

/** Returns the name of the innermost named thing on the path. */
function nameAt(record: unknown, steps: readonly string[]): string | undefined {
  let at = record;
  let found: string | undefined;
  for (const step of steps) {
    at = (at as Record<string, unknown> | undefined)?.[step];
    if (typeof at !== 'object' || at === null) break;
    const own = at as Record<string, unknown>;
    const name = NAMES.map((field) => own[field]).find((value) => typeof value === 'string');
    if (typeof name === 'string') found = name;
  }
  return found;
}
