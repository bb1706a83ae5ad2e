import { lastRun } from '../../../calc/engine/engine-runs.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { instantOf } from '../../../units/calendar.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const engineRunBeforeLastWork: Rule = {
  code: 'ENGINE_RUN_BEFORE_LAST_WORK',
  severity: 'blocks',
  meaning: 'The last engine run is older than the last modification or engine task',
  remedy: m.engineRunBeforeLastWork_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const last = lastRun(visit.engineRuns ?? [], 'after');
    if (!last) return undefined;
    const tasks = (visit.inspection?.tasks ?? []).filter(
      ({ kind, zone }) => (kind === 'engine' || kind === 'propeller') && !/run|lauf/i.test(zone),
    );
    const work = [
      ...tasks.map(({ id, at }) => ({ id, what: said(m.engineRunBeforeLastWork_task, { id }), at })),
      ...(visit.modifications ?? []).map(({ id, finishedAt }) => ({
        id,
        what: said(m.engineRunBeforeLastWork_modification, { id }),
        at: finishedAt,
      })),
    ];
    const later = work.find(({ at }) => at !== undefined && instantOf(at) > instantOf(last.run.at));
    return later
      ? {
          path: ['engineRuns', last.index, 'at'],
          sentence: said(m.engineRunBeforeLastWork_doneAfterLastRun, { what: later.what }),
          data: { work: later.id },
        }
      : undefined;
  },
};
