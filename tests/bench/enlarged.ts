interface Entry {
  id: string;
  [key: string]: unknown;
}

interface Visit {
  baseline: { equipment: Entry[] };
  inspection: { tasks: Entry[] };
  parts: Entry[];
  findings: Entry[];
  worksheet: Entry[];
  lives: { items: Entry[] };
  bulletins: { items: Entry[] };
  [key: string]: unknown;
}

/** The same entries again under other names: `E01`, `E01-1`, `E01-2` … */
function repeated(entries: readonly Entry[], times: number): Entry[] {
  return Array.from({ length: times }, (_, copy) =>
    entries.map((entry) => (copy === 0 ? entry : { ...entry, id: `${entry.id}-${copy}` })),
  ).flat();
}

/** A visit whose long lists are several times as long: still valid, no longer an aircraft. */
export function enlarged(record: unknown, times: number): unknown {
  const visit = structuredClone(record) as Visit;
  visit.baseline.equipment = repeated(visit.baseline.equipment, times).map((item) => ({ ...item, mass: 0.1 }));
  visit.inspection.tasks = repeated(visit.inspection.tasks, times);
  visit.parts = repeated(visit.parts, times);
  visit.findings = repeated(visit.findings, times);
  visit.worksheet = repeated(visit.worksheet, times);
  visit.lives.items = repeated(visit.lives.items, times);
  visit.bulletins.items = repeated(visit.bulletins.items, times);
  return visit;
}
