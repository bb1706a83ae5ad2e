/** Published price of the platform: US dollars a unit beyond the amount that the paid plan includes each month. */
export interface Price {
  what: string;
  /** Unit that one price buys. */
  unit: string;
  perUnit: number;
  included: number;
  /** Source of the price, or the note that none was read. */
  source: string;
}

const DURABLE_OBJECTS = 'developers.cloudflare.com/durable-objects/platform/pricing';
const R2 = 'developers.cloudflare.com/r2/pricing';

export const PRICES = {
  requests: {
    what: 'Requests',
    unit: 'million',
    perUnit: 0.3,
    included: 10,
    source: 'developers.cloudflare.com/workflows/reference/pricing (as Workers Standard)',
  },
  cpu: {
    what: 'CPU time',
    unit: 'million ms',
    perUnit: 0.02,
    included: 30,
    source: 'developers.cloudflare.com/workflows/reference/pricing (as Workers Standard)',
  },
  objectCalls: {
    what: 'Calls of Durable Objects',
    unit: 'million',
    perUnit: 0.15,
    included: 1,
    source: DURABLE_OBJECTS,
  },
  objectTime: {
    what: 'Time of Durable Objects',
    unit: 'million GB·s',
    perUnit: 12.5,
    included: 0.4,
    source: DURABLE_OBJECTS,
  },
  objectRows: {
    what: 'Rows written by Durable Objects',
    unit: 'million',
    perUnit: 1,
    included: 50,
    source: DURABLE_OBJECTS,
  },
  objectStorage: { what: 'Storage of Durable Objects', unit: 'GB', perUnit: 0.2, included: 5, source: DURABLE_OBJECTS },
  blobWrites: { what: 'Writes to R2 (class A)', unit: 'million', perUnit: 4.5, included: 1, source: R2 },
  blobReads: { what: 'Reads from R2 (class B)', unit: 'million', perUnit: 0.36, included: 10, source: R2 },
  blobStorage: { what: 'Storage in R2', unit: 'GB', perUnit: 0.015, included: 10, source: R2 },
  indexStorage: { what: 'Storage in D1', unit: 'GB', perUnit: 0.75, included: 5, source: 'from memory, unverified' },
} as const satisfies Record<string, Price>;

export type Priced = keyof typeof PRICES;

/** Monthly price of the paid plan without any use, from memory. */
export const PLAN_DOLLARS = 5;

/** Assumed figure, with its source. */
export interface Assumption {
  what: string;
  value: number;
  unit: string;
  basis: string;
}

/** Assumed fleet, its activity, and what each activity uses. */
export const ASSUMED = {
  aircraft: { what: 'Aircraft', value: 1_000_000, unit: '', basis: 'the question' },
  visits: { what: 'Visits', value: 2, unit: 'a year and aircraft', basis: 'assumed' },
  issues: { what: 'Packs sealed', value: 1.3, unit: 'a visit', basis: 'assumed' },
  amendments: { what: 'Amendments', value: 30, unit: 'a visit', basis: 'assumed' },
  assessments: { what: 'Assessments and drafts read', value: 100, unit: 'a visit', basis: 'assumed' },
  openings: { what: 'Pages and files opened by link', value: 40, unit: 'a year and aircraft', basis: 'assumed' },
  photographs: { what: 'Photographs and documents', value: 3, unit: 'a visit', basis: 'assumed' },
  packMB: {
    what: 'Pack with its text, record and photographs, which are in it and stored with it',
    value: 4,
    unit: 'MB',
    basis: 'assumed; the full demo is 0.75 MB, without photographs of full size',
  },
  ledgerKB: {
    what: 'Ledger of an aircraft with its tables',
    value: 78,
    unit: 'kB',
    basis: 'measured, empty except for one visit',
  },
  visitKB: {
    what: 'Record and entries of a visit in the ledger',
    value: 60,
    unit: 'kB',
    basis: 'the full demo has 78 kB, a weighing 3 kB; 30 entries of 0.4 kB',
  },
  indexKB: { what: 'Row of the index', value: 0.49, unit: 'kB', basis: 'measured over 100,000 rows' },
  assessmentMs: {
    what: 'CPU of an assessment',
    value: 10,
    unit: 'ms',
    basis: '6 measured, full demo (`npm run bench`); rounded up',
  },
  sealMs: {
    what: 'CPU of a release',
    value: 200,
    unit: 'ms',
    basis: '150 to 200 measured, full demo (`npm run bench`)',
  },
  otherMs: {
    what: 'CPU of any other request',
    value: 2,
    unit: 'ms',
    basis: 'assumed, from requests under load (`npm run bench:archive`)',
  },
  callMs: {
    what: 'Time of a call of an object',
    value: 10,
    unit: 'ms',
    basis: 'assumed; 128 MB are billed for as long',
  },
} as const satisfies Record<string, Assumption>;

/** Returns the monthly use of everything, in the units of the prices, after a number of years. */
export function usedInMonth(years: number): Record<Priced, number> {
  const of = (name: keyof typeof ASSUMED): number => ASSUMED[name].value;
  const visits = (of('aircraft') * of('visits')) / 12;
  const packs = visits * of('issues');
  const amended = visits * of('amendments');
  const assessed = visits * of('assessments') + amended;
  const opened = (of('aircraft') * of('openings')) / 12;
  const requests = assessed + packs + opened + visits * of('photographs');
  const cpuMs = assessed * of('assessmentMs') + packs * of('sealMs') + opened * of('otherMs');
  // An assessment calls the workshop for key and people, and the ledger once; an amendment the ledger once more; a link
  // only the ledger.
  const calls = assessed * 3 + amended + packs * 9 + opened * 2.5;
  const packsKept = packs * 12 * years;
  return {
    requests: requests / 1e6,
    cpu: cpuMs / 1e6,
    objectCalls: calls / 1e6,
    objectTime: (calls * (of('callMs') / 1_000) * 0.128) / 1e6,
    // A row and each index over it count: visit and chain for an amendment; pack, visit, chain, request, outbox and alarm for a release.
    objectRows: (amended * 5 + packs * 14 + opened * 3) / 1e6,
    objectStorage: (of('aircraft') * of('ledgerKB') + visits * 12 * years * of('visitKB')) / 1e6,
    // Five files of a pack and the pointer to it; each is searched before it is written.
    blobWrites: (packs * (6 + of('photographs')) + visits * of('photographs')) / 1e6,
    // Facts about each photograph, and the open items of the pack before.
    blobReads: (assessed * (of('photographs') + 1) + packs * (5 + 2 * of('photographs')) + opened * 3.5) / 1e6,
    blobStorage: (packsKept * of('packMB')) / 1e3,
    indexStorage: (packsKept * of('indexKB')) / 1e6,
  };
}

/** Returns the monthly cost of one item, in US dollars. */
export function dollars(priced: Priced, used: number): number {
  const { perUnit, included } = PRICES[priced];
  return Math.max(0, used - included) * perUnit;
}

/** Returns the total monthly cost in US dollars, after a number of years. */
export function dollarsInMonth(years: number): number {
  const used = Object.entries(usedInMonth(years)) as [Priced, number][];
  return used.reduce((sum, [priced, amount]) => sum + dollars(priced, amount), PLAN_DOLLARS);
}
