import * as z from 'zod';
import { LIMITS } from '../../limits.ts';
import { found, json, reached } from '../answer.ts';
import { packOf } from '../params.ts';
import { requestBody } from '../request-body.ts';
import type { Operation } from '../route.ts';
import { PackAnswer } from '../schemas.ts';
import { packAnswer } from './packs.ts';

const WithdrawalRequest = z.strictObject({
  by: z
    .string()
    .min(1)
    .max(80)
    .meta({ description: 'Name of the person who withdraws it', examples: ['Jonas Veldt'] }),
  reason: z
    .string()
    .min(1)
    .max(LIMITS.lineLength)
    .meta({ examples: ['Weighed with the wrong scale certificate'] }),
});

export const withdrawPack: Operation = {
  id: 'withdrawPack',
  summary: 'Withdraw a release, with the reason',
  description:
    'The pack stays in the archive and says from now on, on every link and in every verification, that it was withdrawn. It cannot be undone: release again to replace it. Withdrawing what is withdrawn changes nothing.',
  body: { type: 'application/json', description: 'Who and why', schema: WithdrawalRequest },
  answers: { 200: { description: 'The pack as it stands', content: { 'application/json': PackAnswer } } },
  problems: ['malformed-json', 'body-too-large', 'unsupported-media-type', 'request-not-valid'],
  async handle(call) {
    const { by, reason } = await requestBody(call.request, WithdrawalRequest);
    const { pack, ledger } = packOf(call);
    const at = call.world.now().toISOString();
    const request = { workshop: call.caller.workshop, pack, by, reason, at };
    const withdrawn = reached(await call.world.archive.ledger(ledger, (calls) => calls.withdraw(request)));
    call.world.log({ code: 'PACK_WITHDRAWN', pack });
    return json(packAnswer(found(withdrawn, 'such pack')));
  },
};
