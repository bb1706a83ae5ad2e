import * as z from 'zod';
import type { PackSummary } from '../../../core/core.ts';
import { canonicalJson } from '../../../core/pack/canonical-json.ts';
import type { LedgerName, Reached } from '../../archive/archive.ts';
import type { Relisted as ToldAgain } from '../../archive/ledger/ledger-calls.ts';
import { json, orNone, orNotFound, orUnavailable } from '../answer.ts';
import { summaryIn } from '../facts-form.ts';
import { ledgerOf } from '../params.ts';
import type { Call, Operation } from '../route.ts';

const Relisted = z
  .object({
    registration: z.string(),
    packs: z.int().meta({ description: 'Number of packs sent to the list again' }),
    mended: z.int().meta({
      description:
        'Number of pointers from files and links, and of rows of packs, that were lost or damaged and were rebuilt',
    }),
  })
  .meta({ title: 'Relisting' });

export const relistAircraft: Operation = {
  id: 'relistAircraft',
  summary: 'Rebuild the list of packs for an aircraft, and the pointers to its packs',
  isRepeatable: true,
  description:
    'For a deployment that lost its database for lists, or the pointers from files and links to packs: both follow from the ledgers. The list is written automatically shortly afterwards; repeating the call does no harm.',
  answers: { 202: { description: 'Accepted; done shortly', content: { 'application/json': Relisted } } },
  async handle(call) {
    const name = ledgerOf(call);
    const { archive } = call.world;
    const relist = async (sealed: PackSummary[]) =>
      orUnavailable(await archive.ledger(name, (ledger) => ledger.relist(name.workshop, sealed)));
    const { packs, tokens } = await relist([]);
    orNotFound(packs[0], 'such packs');
    let { mended } = await relist(await sealedSummaries(call, name, packs));
    for (const { pack, pdfSha256 } of packs) {
      const way = { ...name, pack };
      if (!leadsTo(await archive.packOfFile(pdfSha256), way)) mended += 1;
      orUnavailable(await archive.pointFile(pdfSha256, way));
    }
    for (const token of tokens) {
      if (!leadsTo(await archive.ledgerOfLink(token), name)) mended += 1;
      orUnavailable(await archive.pointLink(token, name));
    }
    return json({ registration: name.registration, packs: packs.length, mended }, 202);
  },
};

/** Whether a pointer exists and has the right target. */
const leadsTo = (outcome: Reached<object | null>, way: object): boolean =>
  canonicalJson(orNone(outcome)) === canonicalJson(way);

/** Returns the summaries of packs as sealed, if they can be read. */
async function sealedSummaries(
  call: Call,
  { workshop }: LedgerName,
  packs: ToldAgain['packs'],
): Promise<PackSummary[]> {
  const summaries: PackSummary[] = [];
  for (const { factsSha256: sha256 } of packs) {
    const bytes = sha256 === null ? null : orNone(await call.world.archive.blob({ workshop, sha256 }));
    const summary = bytes && summaryIn(new TextDecoder().decode(bytes));
    if (summary) summaries.push(summary);
  }
  return summaries;
}
