import * as z from 'zod';
import { found, json, reached } from '../answer.ts';
import { ledgerOf } from '../params.ts';
import type { Operation } from '../route.ts';

const Relisted = z
  .object({
    registration: z.string(),
    packs: z.int().meta({ description: 'So many packs are told to the list again' }),
  })
  .meta({ title: 'Relisting' });

export const relistAircraft: Operation = {
  id: 'relistAircraft',
  summary: 'Put the packs of an aircraft into the list of all packs again',
  isRepeatable: true,
  description:
    'For a deployment whose database for lists was lost or damaged: the list follows from the ledgers. It is written a moment later, by itself; to repeat it does no harm.',
  answers: { 202: { description: 'It will be done', content: { 'application/json': Relisted } } },
  async handle(call) {
    const name = ledgerOf(call);
    const packs = reached(await call.world.archive.ledger(name, (ledger) => ledger.relist(name.workshop)));
    return json({ registration: name.registration, packs: found(packs > 0 ? packs : null, 'such packs') }, 202);
  },
};
