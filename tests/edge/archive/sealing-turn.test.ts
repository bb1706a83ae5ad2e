import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { SealingTurn } from '../../../worker/edge/archive/ledger/sealing-turn.ts';
import { keep, RECORD, release, testService } from '../service.ts';

test('twelve visits of one aircraft that are released at once are all sealed, one after another', async () => {
  const service = await testService();
  const paths = Array.from({ length: 12 }, (_, index) => `/v1/aircraft/Q-TST/visits/v${index + 1}`);
  for (const path of paths) await keep(service, RECORD, path);
  const answers = await Promise.all(paths.map((path) => release(service, {}, path)));
  expect(answers.map(({ status }) => status)).toEqual(paths.map(() => 201));
  const { items } = await (await service.call('/v1/aircraft/Q-TST/packs')).json<{ items: { pack: string }[] }>();
  expect(new Set(items.map(({ pack }) => pack)).size).toBe(12);
});

test('a release that is refused does not keep the next one waiting', async () => {
  const service = await testService();
  await keep(service);
  for (let refused = 0; refused < 30; refused++)
    expect((await release(service, { 'If-Match': '"another"' })).status).toBe(412);
  expect((await release(service)).status).toBe(201);
});

describe('SealingTurn', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });

  afterEach(() => {
    vi.useRealTimers();
  });

  /** How a release waits. */
  async function wait(sealing: SealingTurn): Promise<number> {
    while (sealing.held) await sealing.held;
    return sealing.take();
  }

  test('lets one after another through, and each only once the one before has left', async () => {
    const sealing = new SealingTurn();
    const through: number[] = [];
    const waiting = Array.from({ length: 3 }, () => wait(sealing).then((turn) => through.push(turn)));
    for (const turn of [1, 2, 3]) {
      await vi.advanceTimersByTimeAsync(10);
      expect(through.at(-1)).toBe(turn);
      // One that is not its own is let be.
      sealing.leave(turn - 1);
      expect(sealing.held).toBeDefined();
      sealing.leave(turn);
    }
    await Promise.all(waiting);
    expect(sealing.held).toBeUndefined();
  });

  test('ends by itself where nobody gives it back', async () => {
    const sealing = new SealingTurn();
    sealing.take();
    let next: number | undefined;
    void wait(sealing).then((turn) => {
      next = turn;
    });
    await vi.advanceTimersByTimeAsync(4_000);
    expect(next).toBeUndefined();
    await vi.advanceTimersByTimeAsync(2_000);
    expect(next).toBe(2);
  });
});
