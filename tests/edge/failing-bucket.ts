import { env } from 'cloudflare:workers';
import { CloudArchive } from '../../worker/edge/archive/cloud-archive.ts';

/** An archive whose bucket fails on the given operation while `isFailing` says so. */
export function archiveFailingOn(operation: 'put' | 'get' | 'head', isFailing: () => boolean): CloudArchive {
  const bucket = new Proxy(env.BLOBS, {
    get(target, name) {
      const own = Reflect.get(target, name);
      if (typeof own !== 'function') return own;
      return (...values: unknown[]) => {
        if (name === operation && isFailing()) return Promise.reject(new Error('bucket unreachable'));
        return Reflect.apply(own, target, values);
      };
    },
  });
  return new CloudArchive({ ...env, BLOBS: bucket });
}
