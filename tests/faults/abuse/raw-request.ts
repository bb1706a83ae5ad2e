import { connect } from 'node:net';

/** Far above what an answer takes on a slow machine. */
const HANGING_MS = 60_000;

/**
 * Sends bytes as they are over a connection of their own and reads what comes back until the answer has its header.
 *
 * @returns the header of the answer; empty where the connection was closed without one
 * @throws Error when neither comes
 */
export function rawRequest(origin: string, bytes: string | Buffer): Promise<string> {
  const { hostname, port } = new URL(origin);
  return new Promise((resolve, reject) => {
    let answer = '';
    const socket = connect(Number(port), hostname, () => socket.write(bytes));
    const isOver = setTimeout(() => {
      socket.destroy();
      reject(new Error(`No answer to ${JSON.stringify(String(bytes).slice(0, 500))}`));
    }, HANGING_MS);
    const end = (): void => {
      clearTimeout(isOver);
      socket.destroy();
      resolve(answer.split('\r\n\r\n')[0] ?? '');
    };
    socket.setEncoding('latin1');
    socket.on('data', (text: string) => {
      answer += text;
      if (answer.includes('\r\n\r\n')) end();
    });
    socket.on('close', end);
    socket.on('error', end);
  });
}
