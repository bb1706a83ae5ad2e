import { createServer } from 'node:net';

/** Returns the first free port from `wanted` upwards, among the next twenty. */
export async function freePort(wanted: number): Promise<number> {
  for (let port = wanted; port < wanted + 20; port++) if (await isFree(port)) return port;
  throw new Error(`Cannot start: ports ${wanted} to ${wanted + 19} are all taken`);
}

function isFree(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', () => resolve(false));
    probe.listen(port, '127.0.0.1', () => probe.close(() => resolve(true)));
  });
}
