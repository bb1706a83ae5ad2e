import { allItems, everyItem, type Pack, type Slipmark } from '../../../worker/client/client.ts';

/** Visit that is not released yet, with its progress. */
export interface VisitInHand {
  visit: string;
  blocks: number;
  /** Cautions not accepted yet. */
  cautions: number;
  /** Minutes between readiness and the latest take-off; undefined without a departure. */
  slackMin: number | undefined;
}

/** Aircraft in the fleet list. */
export interface FleetLine {
  registration: string;
  /** All packs of the aircraft, newest first. */
  packs: Pack[];
  inHand: VisitInHand[];
}

/** Reads the line of an aircraft; undefined if nothing is kept of it. */
export async function fleetLine(client: Slipmark, registration: string): Promise<FleetLine | undefined> {
  const inHand: VisitInHand[] = [];
  for await (const { visit, state } of everyItem(client.listVisits, { registration })) {
    if (state === 'working') inHand.push({ visit, ...(await readiness(client, registration, visit)) });
  }
  const { newest, packs, visits } = (await client.getAircraft({ registration })).body;
  if (visits === 0 && newest === null) return undefined;
  // A second request is made only if there are more packs.
  const all = packs > 1 ? await allItems(client.listAircraftPacks, { registration }) : newest ? [newest] : [];
  return { registration, packs: all, inHand };
}

async function readiness(client: Slipmark, registration: string, visit: string) {
  const { findings, results } = (await client.getAssessment({ registration, visit })).body;
  const open = findings.filter((finding) => finding.acknowledgedBy === undefined);
  const count = (severity: string): number => open.filter((finding) => finding.severity === severity).length;
  return { blocks: count('blocks'), cautions: count('caution'), slackMin: results.clock.slackMin };
}
