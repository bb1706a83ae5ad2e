import { found, json, reached } from '../answer.ts';
import { ledgerOf } from '../params.ts';
import type { Operation } from '../route.ts';
import { DueAnswer } from '../schemas.ts';
import { sealedRecord } from '../sealed-record.ts';

export const getDue: Operation = {
  id: 'getDue',
  summary: 'What is due on an aircraft, as its newest pack leaves it, counted from today',
  description: 'Hours and landings are those at the last release: what was flown since is not known here.',
  answers: {
    200: { description: 'The due list, what comes first at the top', content: { 'application/json': DueAnswer } },
  },
  async handle(call) {
    const { newest } = reached(await call.world.archive.ledger(ledgerOf(call), (ledger) => ledger.overview()));
    const pack = found(newest, 'such pack of this aircraft');
    const assessed = found(await sealedRecord(call, pack, call.world.now().toISOString()), 'due list of this pack');
    const deferred = (assessed.visit.findings ?? []).flatMap(({ id, text, deferral }) => {
      const { untilDate, untilHours } = deferral ?? {};
      return deferral ? [{ id, text, untilDate, untilHours }] : [];
    });
    return json({ pack: pack.summary.pack, issuedAt: pack.summary.issuedAt, items: assessed.results.due, deferred });
  },
};
