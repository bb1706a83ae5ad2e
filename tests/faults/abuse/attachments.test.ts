import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sha256 } from '../../../worker/pack/digest.ts';
import { RUNS } from '../../property-runs.ts';
import { abused } from './abused.ts';
import { type Chance, chanceOf } from './chance.ts';

const FOLDER = `${import.meta.dirname}/../../../fixtures/attachments`;
const SPOILT = 1_000;

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

test(`${SPOILT} spoilt files are kept or refused`, { timeout: 300_000 }, async () => {
  const service = await abused();
  const chance = chanceOf(Number(RUNS.seed));
  const statuses = new Set<number>();
  for (let index = 0; index < SPOILT; index++) {
    const body = spoilt(chance.oneOf(FILES), chance);
    const headers = { 'Content-Type': 'application/octet-stream' };
    statuses.add(await service.send(`/v1/attachments/${await sha256(body)}`, { method: 'PUT', body, headers }));
  }
  expect(statuses).toContain(201);
  expect(statuses).toContain(422);
});
