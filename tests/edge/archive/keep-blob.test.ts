import { env } from 'cloudflare:workers';
import { expect, test } from 'vitest';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { keepBlob } from '../../../worker/edge/archive/keep-blob.ts';

const BYTES = new TextEncoder().encode('a sealed file');

test('keepBlob() never writes over what another request wrote meanwhile', async () => {
  const digest = await sha256(BYTES);
  const key = `sha256/keep-blob/${digest}`;
  // The other one comes between the look and the write.
  const bucket = new Proxy(env.BLOBS, {
    get(target, name) {
      if (name !== 'get') return Reflect.get(target, name).bind(target);
      return async (asked: string) => {
        const found = await target.get(asked);
        await target.put(asked, BYTES, { customMetadata: { by: 'another' } });
        return found;
      };
    },
  });
  await keepBlob(bucket, key, digest, BYTES);
  expect((await env.BLOBS.head(key))?.customMetadata).toEqual({ by: 'another' });
});

test('keepBlob() replaces what is damaged, and lets be what is whole', async () => {
  const digest = await sha256(BYTES);
  const key = `sha256/keep-blob-damaged/${digest}`;
  await env.BLOBS.put(key, 'something else');
  await keepBlob(env.BLOBS, key, digest, BYTES);
  const healed = await env.BLOBS.get(key);
  expect(await healed?.bytes()).toEqual(BYTES);
  await keepBlob(env.BLOBS, key, digest, BYTES);
  expect((await env.BLOBS.head(key))?.etag).toBe(healed?.etag);
});
