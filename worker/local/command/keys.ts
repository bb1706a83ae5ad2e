import type { Key, NewKey, Slipmark } from '../../client/client.ts';
import { command, UsageError } from './command.ts';
import type { Output } from './output.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

/** Exit codes. */
const EXIT = { done: 0, failed: 1, notUnderstood: 2 } as const;

type NewKeyRequest = Parameters<Slipmark['makeKey']>[0]['body'];

/** Calls the service, prints lines for people, and returns the outcome for `--json`. */
type Task = (client: Slipmark, say: (line: string) => void) => Promise<unknown>;

export const keys = command({
  forms: [
    'list                     prints every key and its last use',
    'make --label TEXT --scopes records,release [--person ID]',
    'rotate KEY               replaces the secret; the old one stops working',
    'revoke KEY               the key stops working',
    'rotate-seal              seals with a new key from now on',
  ],
  options: {
    label: { type: 'string', value: 'TEXT', help: 'use of the new key' },
    scopes: { type: 'string', value: 'LIST', help: 'scopes of the new key, separated by commas' },
    person: { type: 'string', value: 'ID', help: 'holder of the new key, the only person it can release for' },
    ...SERVICE_OPTIONS,
  },
  exits: { 0: 'done', 1: 'refused', 2: 'command line not understood', 3: 'service not reached' },
  failures: EXIT,
  async run(positionals, values, output: Output) {
    const task = taskOf(positionals, values);
    output.result(await task(clientFrom(values, output), output.say));
    return EXIT.done;
  },
});

interface Wanted {
  label?: string;
  scopes?: string;
  person?: string;
}

function taskOf([name, key, ...rest]: readonly string[], { label, scopes, person }: Wanted): Task {
  const isAlone = key === undefined;
  if (rest.length === 0) {
    if (name === 'list' && isAlone) return list;
    if (name === 'rotate-seal' && isAlone) return rotateSeal;
    if (name === 'make' && isAlone && label !== undefined && scopes !== undefined)
      return make({ label, scopes: scopes.split(',') as NewKeyRequest['scopes'], person });
    if (name === 'rotate' && !isAlone)
      return async (client, say) => showSecret((await client.rotateKey({ key })).body, say);
    if (name === 'revoke' && !isAlone) return revoke(key);
  }
  throw new UsageError(`Unknown form of the command: ${['keys', name, key, ...rest].join(' ').trim()}`);
}

const list: Task = async (client, say) => {
  const { body } = await client.listKeys();
  for (const key of body.items) say(line(key));
  return body;
};

const rotateSeal: Task = async (client, say) => {
  const { body } = await client.rotateSealKey();
  say(`Sealing with ${body.keys[0]?.kid}; ${body.keys.length - 1} older keys stay published`);
  return body;
};

const make =
  (body: NewKeyRequest): Task =>
  async (client, say) =>
    showSecret((await client.makeKey({ body })).body, say);

const revoke =
  (key: string): Task =>
  async (client, say) => {
    await client.revokeKey({ key });
    say('Revoked: it no longer works');
    return { revoked: key };
  };

function showSecret(key: NewKey, say: (line: string) => void): NewKey {
  say(line(key));
  say(`Key (shown once): ${key.secret}`);
  return key;
}

function line({ key, label, scopes, person, lastUsedAt, revokedAt }: Key): string {
  const state = revokedAt ? `revoked ${revokedAt}` : `last used ${lastUsedAt ?? 'never'}`;
  return `${key}  ${label}  ${scopes.join(',')}${person ? `  held by ${person}` : ''}  ${state}`;
}
