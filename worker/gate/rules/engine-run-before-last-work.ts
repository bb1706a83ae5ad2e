import { lastRun } from '../../calc/engine-runs.ts';
import { instantOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const engineRunBeforeLastWork: Rule = {
  code: 'ENGINE_RUN_BEFORE_LAST_WORK',
  severity: 'blocks',
  meaning: 'The last run is older than the last modification or engine task',
  remedy: phrase`Run the engine again`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const last = lastRun(visit.engineRuns ?? [], 'after');
    if (!last) return [];
    const tasks = (visit.inspection?.tasks ?? []).filter(
      ({ kind, zone }) => (kind === 'engine' || kind === 'propeller') && !/run|lauf/i.test(zone),
    );
    const work = [
      ...tasks.map(({ id, at }) => ({ what: say.words`Task ${id}`, at })),
      ...(visit.modifications ?? []).map(({ id, finishedAt }) => ({
        what: say.words`Modification ${id}`,
        at: finishedAt,
      })),
    ];
    const later = work.find(({ at }) => at !== undefined && instantOf(at) > instantOf(last.run.at));
    return later
      ? [
          {
            path: ['engineRuns', last.index, 'at'],
            sentence: say.words`${later.what} was done after the last run of the engine`,
            data: { work: later.what },
          },
        ]
      : [];
  },
};
