// npm run keys -- list | make | rotate KEY | revoke KEY | rotate-seal, with --origin and --key: the keys of a workshop.
import { parseArgs } from 'node:util';

const USAGE = `Usage: npm run keys -- COMMAND [--origin URL] [--key KEY] [--json]
  list                                             every key, with its last use
  make --label TEXT --scopes records,release [--person ID]
  rotate KEY                                       a new text for a key; the old one opens nothing
  revoke KEY
  rotate-seal                                      seal with a new key from now on
  --key may be left out where SLIPMARK_KEY is set; --origin is http://127.0.0.1:8787 where it is not given`;

/** What the process answers with. */
const EXIT = { done: 0, refused: 1, notUnderstood: 2 } as const;

interface KeyLine {
  key: string;
  label: string;
  scopes: string[];
  person: string | null;
  lastUsedAt: string | null;
  revokedAt: string | null;
  secret?: string;
}

interface Asked {
  method: string;
  path: string;
  body?: object;
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    origin: { type: 'string', default: 'http://127.0.0.1:8787' },
    key: { type: 'string', default: process.env.SLIPMARK_KEY ?? '' },
    label: { type: 'string' },
    scopes: { type: 'string' },
    person: { type: 'string' },
    json: { type: 'boolean', default: false },
  },
});

/** The call that a command stands for; undefined where it is not understood. */
function asked([command, key, ...rest]: readonly string[]): Asked | undefined {
  const { label, scopes, person } = values;
  if (rest.length > 0) return undefined;
  if (command === 'list') return { method: 'GET', path: '/v1/keys' };
  if (command === 'rotate-seal') return { method: 'POST', path: '/v1/seal-keys' };
  if (command === 'rotate' && key) return { method: 'POST', path: `/v1/keys/${encodeURIComponent(key)}/rotation` };
  if (command === 'revoke' && key) return { method: 'DELETE', path: `/v1/keys/${encodeURIComponent(key)}` };
  if (command === 'make' && label !== undefined && scopes !== undefined)
    return { method: 'POST', path: '/v1/keys', body: { label, scopes: scopes.split(','), ...(person && { person }) } };
  return undefined;
}

function line({ key, label, scopes, person, lastUsedAt, revokedAt }: KeyLine): string {
  const state = revokedAt ? `revoked ${revokedAt}` : `last used ${lastUsedAt ?? 'never'}`;
  return `${key}  ${label}  ${scopes.join(',')}${person ? `  in the hand of ${person}` : ''}  ${state}`;
}

function say(answer: unknown): void {
  if (values.json) {
    console.log(JSON.stringify(answer, null, 2));
    return;
  }
  const { items, keys, secret } = answer as { items?: KeyLine[]; keys?: { kid: string }[]; secret?: string };
  if (items) for (const item of items) console.log(line(item));
  else if (keys) console.log(`Sealing with ${keys[0]?.kid}; ${keys.length - 1} older keys stay published`);
  else {
    console.log(line(answer as KeyLine));
    console.log(`Told this once: ${secret}`);
  }
}

async function run({ method, path, body }: Asked): Promise<number> {
  const response = await fetch(values.origin + path, {
    method,
    headers: { Authorization: `Bearer ${values.key}`, ...(body && { 'Content-Type': 'application/json' }) },
    ...(body && { body: JSON.stringify(body) }),
  });
  if (response.status === 204) console.log('Revoked: it opens nothing any more');
  else if (response.ok) say(await response.json());
  else {
    const { title = '', detail = '' } = (await response.json()) as { title?: string; detail?: string };
    console.error(`${title}: ${detail}`);
  }
  return response.ok ? EXIT.done : EXIT.refused;
}

const call = asked(positionals);
if (!call) console.error(USAGE);
process.exitCode = call
  ? await run(call).catch((error: unknown) => {
      console.error(`Cannot reach ${values.origin}: ${error instanceof Error ? error.message : error}`);
      return EXIT.refused;
    })
  : EXIT.notUnderstood;
