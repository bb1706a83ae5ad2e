import * as z from 'zod';
import { saysSomething } from '../../../core/text/printable.ts';
import { json, orNotFound, orUnavailable } from '../answer.ts';
import { actorOf, withdrawerName } from '../in-whose-name.ts';
import { packOf } from '../params.ts';
import { printableLine } from '../printable-line.ts';
import { requestBody } from '../request-body.ts';
import type { Operation } from '../route.ts';
import { PackAnswer } from '../schemas.ts';
import { packAnswer } from './packs.ts';

const WithdrawalRequest = z.strictObject({
  by: printableLine(80).meta({
    description:
      'Person who withdraws it: from the table of the workshop, by identifier or name, if there is one; else a person of the record by identifier, or any name',
    examples: ['Jonas Veldt'],
  }),
  reason: printableLine()
    .refine(saysSomething, 'a reason in words')
    .meta({ examples: ['Weighed with the wrong scale certificate'] }),
});

export const withdrawPack: Operation = {
  id: 'withdrawPack',
  summary: 'Withdraw a release, with the reason',
  description:
    'The pack stays in the archive. Every link and every verification shows from now on that it was withdrawn. This cannot be undone: release again to replace it. Withdrawing it again changes nothing.',
  body: { type: 'application/json', description: 'Person and reason', schema: WithdrawalRequest },
  answers: { 200: { description: 'The pack with its withdrawal', content: { 'application/json': PackAnswer } } },
  problems: ['malformed-json', 'body-too-large', 'unsupported-media-type', 'request-not-valid'],
  async handle(call) {
    const stated = await requestBody(call.request, WithdrawalRequest);
    const by = await withdrawerName(call, stated.by);
    const { pack, ledger } = packOf(call);
    const at = call.world.now().toISOString();
    const { workshop, key } = call.caller;
    const request = { workshop, pack, by, reason: stated.reason, actor: actorOf(call), at };
    const withdrawn = orUnavailable(await call.world.archive.ledger(ledger, (calls) => calls.withdraw(request)));
    call.world.log({ code: 'PACK_WITHDRAWN', pack, key });
    return json(packAnswer(orNotFound(withdrawn, 'such pack')));
  },
};
