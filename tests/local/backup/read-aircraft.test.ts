import { describe, expect, test } from 'vitest';
import type { Slipmark } from '../../../worker/client/client.ts';
import { readAircraft } from '../../../worker/local/backup/read-aircraft.ts';

describe('readAircraft()', () => {
  /** An aircraft whose chain ends otherwise each time that it is looked at, until it rests. */
  const busyFor = (looks: number): Slipmark => {
    let looked = 0;
    const list = async () => ({ body: { items: [] } });
    const getAircraft = async () => ({ body: { head: { digest: String(Math.min(looks, looked++)) } } });
    return { getAircraft, listLedger: list, listAircraftPacks: list, listVisits: list } as unknown as Slipmark;
  };

  test('reads again until nothing changed meanwhile', async () => {
    expect(await readAircraft(busyFor(3), 'Q-TST')).toMatchObject({ registration: 'Q-TST' });
  });

  test('gives up on an aircraft that never rests, and says so', async () => {
    await expect(readAircraft(busyFor(1000), 'Q-TST')).rejects.toThrow('Cannot export Q-TST: it was changed');
  });
});
