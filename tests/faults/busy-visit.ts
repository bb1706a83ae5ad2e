import { canonicalJson } from '../../worker/core/pack/canonical-json.ts';
import { sha256 } from '../../worker/core/pack/digest.ts';
import { readRecord } from '../../worker/core/record/read-record.ts';
import { type Client, jsonOf, tagOf } from './client.ts';
import { RELEASED_BY, smallRecord } from './small-visit.ts';
import type { PackAnswer, Witness } from './witness.ts';

/** One visit that is amended and released over and over, until the service dies under it. */
export interface BusyVisit {
  witness: Witness;
  visit: string;
  /** Chance of a release after an amendment, from 0 to 1. */
  chance(): number;
  /** Called when a release has been asked for, and when it was acknowledged. */
  on(what: 'release-asked' | 'release-acknowledged'): void;
}

/** What the service may say to a release that lost against another of the same aircraft, at which nothing happens. */
const LOST = [409, 412];

/** Works until the connection breaks. What was asked for and what was acknowledged is noted with the witness. */
export async function workUntilKilled(client: Client, busy: BusyVisit): Promise<void> {
  try {
    for (;;) {
      const tag = await amend(client, busy);
      if (busy.chance() < 0.5) await release(client, busy, tag);
    }
  } catch (error) {
    // A refused or broken connection is a TypeError of fetch; anything else is a finding of the test.
    if (!(error instanceof TypeError)) throw error;
  }
}

const pathOf = ({ witness, visit }: BusyVisit): string => `/v1/aircraft/${witness.registration}/visits/${visit}`;

/** @returns digest of the record as kept */
async function amend(client: Client, busy: BusyVisit): Promise<string> {
  const before = await client(pathOf(busy));
  const record = smallRecord(busy.witness.registration, `Amendment ${busy.witness.attempts} of ${busy.visit}`);
  const recordSha256 = await digestOf(record);
  const attempt = busy.witness.attempt('visit-kept', busy.visit, recordSha256);
  const headers: Record<string, string> =
    before.status === 200 ? { 'If-Match': tagOf(before) } : { 'If-None-Match': '*' };
  const answer = await client(pathOf(busy), { method: 'PUT', body: record, headers });
  if (answer.status !== 200 && answer.status !== 201)
    throw new Error(`An amendment must be kept: ${answer.status} ${new TextDecoder().decode(answer.bytes)}`);
  attempt.answer = jsonOf<{ version: number; recordSha256: string }>(answer);
  return recordSha256;
}

async function release(client: Client, busy: BusyVisit, recordSha256: string): Promise<void> {
  const assessment = await client(`${pathOf(busy)}/assessment`);
  const attempt = busy.witness.attempt('pack-sealed', busy.visit, recordSha256);
  const answered = client(`${pathOf(busy)}/release`, {
    method: 'POST',
    body: { by: RELEASED_BY, knowsOfNoHazard: true },
    headers: { 'If-Match': tagOf(assessment) },
  });
  busy.on('release-asked');
  const answer = await answered;
  if (LOST.includes(answer.status)) return;
  if (answer.status !== 201) throw new Error(`A release must be sealed: ${answer.status}`);
  attempt.answer = jsonOf<PackAnswer>(answer);
  busy.on('release-acknowledged');
}

/** The digest under which the service keeps a record. */
async function digestOf(record: object): Promise<string> {
  const read = readRecord(record);
  if (!read.ok) throw new Error('The record of the test must fit the schema');
  return sha256(canonicalJson(read.record));
}
