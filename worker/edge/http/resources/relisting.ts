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
    packs: z.int().meta({ description: 'So many packs are told to the list again' }),
    mended: z.int().meta({
      description: 'So many ways from files and links, and rows of packs, were lost or damaged and were made anew',
    }),
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

/** Whether a way is there, and leads where it should. */
const leadsTo = (outcome: Reached<object | null>, way: object): boolean =>
  canonicalJson(orNone(outcome)) === canonicalJson(way);

/** What lists show of packs, as it was sealed, where it can be read. */
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
