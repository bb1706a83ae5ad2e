import { unlinkSync } from 'node:fs';
import { connect, createServer, type Server } from 'node:net';
import { join } from 'node:path';

/** Storage folder locked by this process. */
export interface Lock {
  release(): Promise<void>;
}

/** Max. tries for a lock that another start is taking or leaving. */
const MAX_TRIES = 5;

/**
 * Locks a storage folder for this process until it ends or releases it. The lock is a socket that the process listens
 * on, so that one left behind by a dead process can be detected.
 *
 * @returns undefined if another process has the lock
 */
export async function takeLock(storage: string): Promise<Lock | undefined> {
  const socket = join(storage, 'lock');
  for (let tries = 0; tries < MAX_TRIES; tries++) {
    const server = await listen(socket);
    if (server) return { release: () => closed(server) };
    if (await isHeld(socket)) return undefined;
    removeLeftover(socket);
  }
  return undefined;
}

/**
 * Removes the socket of a dead process. Two simultaneous starts may both find it: for the second it is already gone.
 */
function removeLeftover(socket: string): void {
  try {
    unlinkSync(socket);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
  }
}

const closed = (server: Server): Promise<void> => new Promise((resolve) => server.close(() => resolve()));

function listen(socket: string): Promise<Server | undefined> {
  return new Promise((resolve, reject) => {
    const server = createServer((visitor) => visitor.destroy());
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE') resolve(undefined);
      else reject(error);
    });
    server.listen(socket, () => resolve(server));
    server.unref();
  });
}

function isHeld(socket: string): Promise<boolean> {
  return new Promise((resolve) => {
    const visitor = connect(socket);
    visitor.once('connect', () => {
      visitor.destroy();
      resolve(true);
    });
    visitor.once('error', () => resolve(false));
  });
}
