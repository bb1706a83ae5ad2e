import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { RUNS } from '../../property-runs.ts';
import { smallRecord, WEIGHED } from '../small-visit.ts';
import { type Abused, abused } from './abused.ts';
import { type Chance, chanceOf } from './chance.ts';

const FOLDER = `${import.meta.dirname}/../../../fixtures/attachments`;
const SPOILT = 500;

const FILES = readdirSync(FOLDER)
  .map((name) => new Uint8Array(readFileSync(`${FOLDER}/${name}`)))
  .filter(({ length }) => length < 200_000);

/** A file with some bytes changed, cut out, repeated or cut off. */
function spoilt(file: Uint8Array, chance: Chance): Uint8Array<ArrayBuffer> {
  const at = chance.integer(0, file.length - 1);
  const length = chance.integer(1, 200);
  const changes = [
    () => file.slice(0, at),
    () => Uint8Array.from([...file.subarray(0, at), ...file.subarray(at + length)]),
    () => Uint8Array.from([...file.subarray(0, at + length), ...file.subarray(at)]),
    () => file.map((byte, index) => (index === at ? chance.integer(0, 255) : byte)),
    () => file.map((byte, index) => (index >= at && index < at + 8 ? 0xff : byte)),
    // Lengths and sizes stand in figures: a single one is enough to ask for gigabytes.
    () => file.map((byte) => (byte >= 0x30 && byte <= 0x39 && chance.isLucky(0.02) ? 0x39 : byte)),
  ];
  return Uint8Array.from(chance.oneOf(changes)());
}

test(`${SPOILT} spoilt files are kept or refused, and what is kept can be printed`, { timeout: 300_000 }, async () => {
  const service = await abused();
  const chance = chanceOf(Number(RUNS.seed));
  const kept: { kind: string; sha256: string }[] = [];
  for (let index = 0; index < SPOILT; index++) {
    const body = spoilt(chance.oneOf(FILES), chance);
    const name = await sha256(body);
    const headers = { 'Content-Type': 'application/octet-stream' };
    const answer = await service.ask(`/v1/attachments/${name}`, { method: 'PUT', body, headers });
    if (answer.ok) kept.push((await answer.json()) as { kind: string; sha256: string });
  }
  expect(kept.length).toBeGreaterThan(SPOILT / 10);
  expect(kept.length).toBeLessThan(SPOILT);
  for (const [index, file] of kept.entries()) await printed(service, file, `v${index}`);
});

/** Hands in a record that names the file, and has its draft printed. */
async function printed(service: Abused, { kind, sha256: name }: { kind: string; sha256: string }, visit: string) {
  const attachment = {
    id: 'A1',
    kind: kind === 'pdf' ? 'paper' : 'photograph',
    title: 'Spoilt',
    sha256: name,
    by: 'edda',
  };
  const record = { ...smallRecord('Q-SPO', 'Spoilt', WEIGHED), attachments: [attachment] };
  const path = `/v1/aircraft/Q-SPO/visits/${visit}`;
  expect(await service.send(path, { method: 'PUT', body: JSON.stringify(record) })).toBe(201);
  expect(await service.send(`${path}/pack.pdf`, { method: 'GET' })).toBe(200);
}
