import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { instantOf } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const signOffBeforeWork: Rule = {
  code: 'SIGN_OFF_BEFORE_WORK',
  severity: 'blocks',
  meaning: 'A sign-off is older than a task of its person and kind',
  remedy: m.signOffBeforeWork_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['signOffs'], visit.signOffs, ({ by, at, kind }) => {
      const own = (visit.inspection?.tasks ?? []).filter((task) => task.by === by && task.kind === kind);
      const late = own.find((task) => task.at !== undefined && instantOf(task.at) > instantOf(at));
      if (late?.at === undefined) return undefined;
      const values = { task: late.id, at: figure.timestamp(late.at), signed: figure.timestamp(at) };
      return { field: 'at', sentence: said(m.signOffBeforeWork_taskLater, values), data: { task: late.id } };
    }),
};
