import { allItems, everyItem, type Pack, type Slipmark } from '../../../worker/client/client.ts';

/** A visit that is not released yet, and how far it is. */
export interface VisitInHand {
  visit: string;
  blocks: number;
  /** Cautions that nobody answers for yet. */
  cautions: number;
  /** Minutes between being ready and the latest take-off; undefined without a departure. */
  slackMin: number | undefined;
}

/** One aircraft as the fleet shows it. */
export interface FleetLine {
  registration: string;
  /** All of its packs, the newest first. */
  packs: Pack[];
  inHand: VisitInHand[];
}

/** What there is to say of an aircraft; undefined where nothing was kept of it after all. */
export async function fleetLine(client: Slipmark, registration: string): Promise<FleetLine | undefined> {
  const inHand: VisitInHand[] = [];
  for await (const { visit, state } of everyItem(client.listVisits, { registration })) {
    if (state === 'working') inHand.push({ visit, ...(await readiness(client, registration, visit)) });
  }
  const { newest, packs, visits } = (await client.getAircraft({ registration })).body;
  if (visits === 0 && newest === null) return undefined;
  // A second question is asked only where there is more to learn.
  const all = packs > 1 ? await allItems(client.listAircraftPacks, { registration }) : newest ? [newest] : [];
  return { registration, packs: all, inHand };
}

async function readiness(client: Slipmark, registration: string, visit: string) {
  const { findings, results } = (await client.getAssessment({ registration, visit })).body;
  const open = findings.filter((finding) => finding.acknowledgedBy === undefined);
  const count = (severity: string): number => open.filter((finding) => finding.severity === severity).length;
  return { blocks: count('blocks'), cautions: count('caution'), slackMin: results.clock.slackMin };
}
