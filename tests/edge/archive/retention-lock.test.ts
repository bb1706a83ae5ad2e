import { env } from 'cloudflare:workers';
import { expect, test } from 'vitest';
import { cloudWorld } from '../../../worker/edge/world.ts';
import { keep, RECORD, release, testService, VISIT } from '../service.ts';

type Method = (...values: unknown[]) => unknown;

/** A bucket under a lock on its sealed files: what stands is neither overwritten nor deleted (R2, bucket locks, read). */
const locked: R2Bucket = new Proxy(env.BLOBS, {
  get: (bucket, method) => {
    const own = Reflect.get(bucket, method) as Method;
    if (method !== 'put' && method !== 'delete') return own.bind(bucket);
    return async (key: string | string[], ...values: unknown[]) => {
      for (const name of [key].flat()) {
        if (name.startsWith('sha256/') && (await bucket.head(name))) throw new Error('object locked');
      }
      return Reflect.apply(own, bucket, [key, ...values]);
    };
  },
});

test('packs are sealed under a retention lock, also where one of their files stands there already', async () => {
  const { archive } = cloudWorld({ ...env, BLOBS: locked });
  const service = await testService({ world: { archive } });
  // Two visits with the same record: its file is kept once.
  for (const visit of [VISIT, `${VISIT}-again`]) {
    await keep(service, RECORD, visit);
    expect((await release(service, {}, visit)).status).toBe(201);
  }
});
