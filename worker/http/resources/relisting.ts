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
  summary: 'Put the packs of an aircraft into the list of all packs again, and lead to them again',
  isRepeatable: true,
  description:
    'For a deployment whose database for lists was lost or damaged, or from whose bucket the ways from files and links to their packs were lost: both follow from the ledgers. The list is written a moment later, by itself; to repeat it does no harm.',
  answers: { 202: { description: 'It will be done', content: { 'application/json': Relisted } } },
  async handle(call) {
    const name = ledgerOf(call);
    const { archive } = call.world;
    const { packs, tokens } = reached(await archive.ledger(name, (ledger) => ledger.relist(name.workshop)));
    found(packs[0], 'such packs');
    for (const { pack, pdfSha256 } of packs) reached(await archive.pointFile(pdfSha256, { ...name, pack }));
    for (const token of tokens) reached(await archive.pointLink(token, name));
    return json({ registration: name.registration, packs: packs.length }, 202);
  },
};
