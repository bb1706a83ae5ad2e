// Node script, `npm run bench:gate`: how many changes of good records the release check finds. Judges nothing.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { ROOT } from '../../../worker/local/service/places.ts';
import { RELEASABLE_AT } from '../../core/gate/assess-record.ts';
import type { Json } from './place.ts';
import { drawAs } from './random.ts';
import { groupLine, groupsOf, tableOf } from './report.ts';
import { type Outcome, runOn } from './run.ts';

const { values } = parseArgs({
  options: {
    fixture: { type: 'string' },
    part: { type: 'string' },
    limit: { type: 'string', default: '400' },
    most: { type: 'string' },
    missed: { type: 'string' },
    // Another sample, for a look at changes on which the rules were not written.
    seed: { type: 'string', default: '' },
  },
});
drawAs(values.seed);
const limit = Number(values.limit);
const most = values.most === undefined ? undefined : Number(values.most);

const outcomes: Outcome[] = [];
let refused = 0;
let sampledOut = 0;
const startMs = performance.now();
for (const [fixture, at] of Object.entries(RELEASABLE_AT)) {
  if (values.fixture !== undefined && fixture !== values.fixture) continue;
  const record = JSON.parse(readFileSync(join(ROOT, `fixtures/visits/${fixture}.json`), 'utf8')) as Json;
  const isWanted = ({ place }: { place: { path: readonly (string | number)[] } }): boolean =>
    values.part === undefined || place.path[0] === values.part;
  const run = runOn(fixture, record, at, { isWanted, most });
  outcomes.push(...run.outcomes);
  refused += run.refused;
  sampledOut += run.sampledOut;
}

const say = (text: string): void => {
  process.stdout.write(`${text}\n`);
};
const seconds = ((performance.now() - startMs) / 1000).toFixed(0);
say(
  `${outcomes.length} changes assessed in ${seconds} s; ${refused} refused at the door, ${sampledOut} left away as alike.`,
);
say('Found: a new block or caution (c: cautions alone). On "nothing" a finding is a false alarm.\n');
say(tableOf(outcomes, 'part', ({ pattern }) => pattern.split('/')[0]?.split(' ')[0] ?? ''));
say('');
say(tableOf(outcomes, 'way', ({ operator }) => operator));
say('');
say(tableOf(outcomes, 'judged by', ({ verdict }) => verdict.by));

const missed = outcomes.filter(
  ({ verdict, found }) => found === 'missed' && ['hurts', 'contradicts'].includes(verdict.is),
);
const alarms = outcomes.filter(({ verdict, found }) => found !== 'missed' && verdict.is === 'nothing');
const free = outcomes.filter(({ verdict, found }) => found === 'missed' && verdict.is === 'free');
const lists = [
  ['Missed', missed, limit],
  ['False alarms', alarms, 40],
  ['Free, a sample', free, 40],
] as const;
const text = lists
  .map(([title, list, shown]) => {
    const groups = groupsOf(list);
    const lines = groups.slice(0, shown).map(groupLine);
    return `${title}: ${list.length} changes in ${groups.length} groups\n\n${lines.join('\n')}`;
  })
  .join('\n\n');
if (values.missed === undefined) say(`\n${groupsOf(missed).slice(0, 20).map(groupLine).join('\n')}`);
else writeFileSync(values.missed, `${text}\n`);
