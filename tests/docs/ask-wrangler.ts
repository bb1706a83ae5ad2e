// Node script: what follows is a command line of wrangler; it is asked for its help, and nothing is done.
import { execFileSync } from 'node:child_process';

const given = process.argv.slice(2);
const options = given.filter((word) => word.startsWith('--'));
const named = given.filter((word) => /^[a-z]/.test(word) && !word.includes('.')).slice(0, 3);
const help = execFileSync('wrangler', [...given, '--help'], {
  encoding: 'utf8',
  env: { ...process.env, NO_COLOR: '1' },
});
// A command that it does not know gives the help of the group, which lists commands.
if (/^COMMANDS$/m.test(help)) throw new Error(`wrangler has no command ${given.join(' ')}`);
if (!help.includes(`wrangler ${named[0]}`)) throw new Error(`wrangler has no command ${named[0]}`);
for (const option of options) if (!help.includes(option)) throw new Error(`wrangler has no option ${option}: ${given}`);
