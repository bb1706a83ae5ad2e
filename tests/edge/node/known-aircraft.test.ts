import { describe, expect, test } from 'vitest';
import { requireNotLost } from '../../../worker/edge/http/known-aircraft.ts';
import type { Call } from '../../../worker/edge/http/route.ts';

const NAME = { workshop: 'meadow', registration: 'Q-TST' };

/** An archive of one aircraft; `after` happens once it has answered, as another request would do it. */
function callTo(kept: { seq: number; isNoted: boolean }, after: () => void = () => undefined): Call {
  const answered = async <T>(value: T) => {
    const answer = { ok: true, value } as const;
    after();
    return answer;
  };
  const archive = {
    ledger: async (_: unknown, question: (calls: object) => Promise<unknown>) =>
      answered(await question({ overview: async () => ({ head: { seq: kept.seq } }) })),
    workshop: async (_: unknown, question: (calls: object) => Promise<unknown>) =>
      answered(await question({ wasKept: async () => kept.isNoted })),
  };
  return { world: { archive } } as unknown as Call;
}

describe('requireNotLost()', () => {
  test('takes an empty ledger of which something was kept for lost', async () => {
    await expect(requireNotLost(callTo({ seq: 0, isNoted: true }), NAME)).rejects.toThrow();
  });

  test('lets a new aircraft be, and one whose ledger stands', async () => {
    await expect(requireNotLost(callTo({ seq: 0, isNoted: false }), NAME)).resolves.toBeUndefined();
    await expect(requireNotLost(callTo({ seq: 3, isNoted: true }), NAME)).resolves.toBeUndefined();
  });

  test('takes no ledger for lost whose first record another request keeps meanwhile', async () => {
    const kept = { seq: 0, isNoted: false };
    const anotherRequest = (): void => {
      Object.assign(kept, { seq: 1, isNoted: true });
    };
    await expect(requireNotLost(callTo(kept, anotherRequest), NAME)).resolves.toBeUndefined();
  });
});
