import { SCHEMA_VERSION } from '../../../worker/core/record/upgrades.ts';

// The form states nothing that nobody chose: only units and paper have a default, and no person is proposed to
// accept a caution but the inspector who writes the reason.

/** Content of the fields, by JSON pointer; empty fields are left out. */
export type Filled = Readonly<Record<string, string | number | boolean>>;

/** Record, and the field of each pointer into it. */
export interface FormRecord {
  record: Record<string, unknown>;
  fieldOf(pointer: string): string;
}

const STATION_KINDS = ['pilot', 'passenger', 'baggage', 'fuel'] as const;
const ID = { people: 'person', scales: 'scale', points: 'point', stations: 'station' } as const;

/**
 * Returns the record of a visit that only weighs. Empty rows are left out and the others close up. Who did what, which
 * scale was under which point, and what is released follow from the form.
 */
export function recordOfForm(filled: Filled): FormRecord {
  const rows = rowsOf(filled);
  const record: Record<string, unknown> = { schemaVersion: SCHEMA_VERSION, aircraft: { stations: [] }, people: [] };
  for (const [field, value] of Object.entries(filled)) {
    const pointer = movedBy(rows, field);
    if (pointer !== undefined) put(record, pointer.split('/').slice(1), value);
  }
  complete(record, rows, String(filled['/weighing/weighedAt'] ?? ''));
  return { record, fieldOf: (pointer) => fieldAt(rows, pointer) };
}

const ROW = /^(.*?)\/(\d+)(?=\/|$)/;

/** Returns the rows with content, for each list. */
function rowsOf(filled: Filled): Map<string, number[]> {
  const rows = new Map<string, number[]>();
  for (const field of Object.keys(filled)) {
    const [, list, row] = ROW.exec(field) ?? [];
    if (list === undefined) continue;
    rows.set(
      list,
      [...new Set([...(rows.get(list) ?? []), Number(row)])].sort((a, b) => a - b),
    );
  }
  // A scale belongs to its point: content in either makes both.
  const [points, scales] = ['/weighing/points', '/weighing/scales'];
  const both = [...new Set([...(rows.get(points) ?? []), ...(rows.get(scales) ?? [])])].sort((a, b) => a - b);
  if (both.length > 0) rows.set(points, both).set(scales, both);
  return rows;
}

/** Returns the pointer of a field in the record; undefined if its row is left out. Readings close up as well. */
function movedBy(rows: Map<string, number[]>, field: string): string | undefined {
  const [whole, list = '', row] = ROW.exec(field) ?? [];
  if (whole === undefined) return field;
  const at = rows.get(list)?.indexOf(Number(row)) ?? -1;
  return at < 0 ? undefined : `${list}/${at}${field.slice(whole.length)}`;
}

/** Values that follow from a field instead of a question of the form. */
const FOLLOWS: Readonly<Record<string, string>> = {
  '/visit/arrivedAt': '/weighing/weighedAt',
  '/visit': '/weighing/weighedAt',
  '/release/by': '/people/1/name',
  '/weighing/by': '/people/0/name',
  '/weighing/checkedBy': '/people/1/name',
};

function fieldAt(rows: Map<string, number[]>, pointer: string): string {
  const source = FOLLOWS[pointer];
  if (source !== undefined) return source;
  const [whole, list = '', at] = ROW.exec(pointer) ?? [];
  if (whole === undefined) return pointer;
  return `${list}/${rows.get(list)?.[Number(at)] ?? at}${pointer.slice(whole.length)}`;
}

function put(at: unknown, [step = '', ...rest]: string[], value: unknown): void {
  if (Array.isArray(at) && rest.length === 0) {
    at.push(value);
    return;
  }
  const holder = at as Record<string, unknown>;
  if (rest.length === 0) {
    holder[step] = value;
    return;
  }
  holder[step] ??= /^\d+$/.test(rest[0] ?? '') ? [] : {};
  put(holder[step], rest, value);
}

interface Made {
  people: Record<string, unknown>[];
  aircraft: { stations: Record<string, unknown>[] };
  weighing?: { points?: Record<string, unknown>[]; scales?: Record<string, unknown>[]; [field: string]: unknown };
  release?: { acknowledgements?: { reason?: unknown }[]; [field: string]: unknown };
  [part: string]: unknown;
}

function complete(record: Record<string, unknown>, rows: Map<string, number[]>, weighedAt: string): void {
  const made = record as Made;
  const { people, aircraft, weighing } = made;
  const [weigher, inspector] = [0, 1].map((row) => idAt(ID.people, row));
  const peopleRows = rows.get('/people') ?? [];
  people.forEach((person, index) => {
    const isInspector = peopleRows[index] === 1;
    person.id = isInspector ? inspector : weigher;
    person.scope = isInspector ? ['airframe', 'weighing', 'release'] : ['airframe', 'weighing'];
  });
  const kinds = rows.get('/aircraft/stations') ?? [];
  aircraft.stations.forEach((station, index) => {
    Object.assign(station, { id: idAt(ID.stations, kinds[index] ?? 0), kind: STATION_KINDS[kinds[index] ?? 0] });
  });
  weighing?.scales?.forEach((scale, index) => {
    scale.id = idAt(ID.scales, index);
  });
  weighing?.points?.forEach((point, index) => {
    Object.assign(point, { id: idAt(ID.points, index), scale: idAt(ID.scales, index) });
  });
  if (weighing) Object.assign(weighing, { by: weigher, checkedBy: inspector });
  const scope = `The weighing of ${weighedAt.slice(0, 10)}, as recorded in this pack.`;
  made.visit = {
    ...(weighedAt && { arrivedAt: weighedAt }),
    summary: 'Weighed for a new schedule; nothing else was done.',
  };
  const acknowledgements = made.release?.acknowledgements?.map(({ reason }) => ({
    code: 'NOTHING_TO_COMPARE',
    by: inspector,
    ground: 'not-possible',
    reason,
  }));
  made.release = { by: inspector, statement: 'weighing-only', scope, ...(acknowledgements && { acknowledgements }) };
}

const idAt = (name: string, row: number): string => `${name}-${row + 1}`;
