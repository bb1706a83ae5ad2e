import * as z from 'zod';
import { SHA256 } from '../../../core/patterns.ts';
import type { TracedPack } from '../../archive/ledger/ledger-calls.ts';
import { json, orUnavailable } from '../answer.ts';
import { requestBody } from '../request-body.ts';
import type { Call, Operation } from '../route.ts';
import { workshopName } from '../workshop-seal.ts';

const VerificationRequest = z.strictObject({
  pdfSha256: z.string().regex(SHA256).meta({ description: 'SHA-256 of the file; the file itself is not sent' }),
});

const Verification = z
  .object({
    verdict: z.enum(['genuine', 'superseded', 'withdrawn', 'unknown']),
    pack: z.string().optional(),
    workshop: z.string().optional().meta({ description: 'Identifier of the workshop that sealed it' }),
    workshopName: z.string().optional().meta({ description: 'Its name, as the deployment knows it' }),
    releasedBy: z.string().optional(),
    issuedAt: z.string().optional(),
    supersededBy: z.string().optional().meta({ description: 'The pack that replaces it' }),
    laterWithdrawn: z
      .string()
      .optional()
      .meta({ description: 'A later pack that was withdrawn: the aircraft has no current release' }),
    corrected: z
      .array(z.string())
      .optional()
      .meta({ description: 'Earlier packs, by their newest issue, that were corrected or withdrawn since' }),
    withdrawal: z.object({ at: z.string(), by: z.string(), reason: z.string() }).optional(),
  })
  .meta({ title: 'Verification' });

export const verify: Operation = {
  id: 'verify',
  summary: 'Check that a file is an unchanged pack of this archive, and whether it is current',
  isRepeatable: true,
  description:
    'By digest. A file that differs from a sealed pack in any byte is unknown. Its own seal shows whether it was altered, with the published keys of the workshop (the verify page and `npm run verify` do both).',
  body: { type: 'application/json', description: 'Digest of the file', schema: VerificationRequest },
  answers: { 200: { description: 'The verdict', content: { 'application/json': Verification } } },
  problems: ['malformed-json', 'body-too-large', 'unsupported-media-type', 'request-not-valid'],
  async handle(call) {
    const { pdfSha256 } = await requestBody(call.request, VerificationRequest);
    const found = await packOfFile(call, pdfSha256);
    if (!found) return json({ verdict: 'unknown' });
    const { workshop, pack, later, corrected, newest } = found;
    const { withdrawal, summary } = pack;
    const stands = later ?? newest;
    const isReplaced = stands !== null && stands.summary.pack !== summary.pack;
    return json({
      verdict: withdrawal ? 'withdrawn' : isReplaced || corrected.length > 0 ? 'superseded' : 'genuine',
      pack: summary.pack,
      workshop,
      workshopName: await workshopName(call, workshop),
      releasedBy: summary.releasedBy,
      issuedAt: summary.issuedAt,
      ...(isReplaced &&
        (stands.withdrawal ? { laterWithdrawn: stands.summary.pack } : { supersededBy: stands.summary.pack })),
      ...(corrected.length > 0 && { corrected: corrected.map((other) => other.summary.pack) }),
      ...(withdrawal && { withdrawal }),
    });
  },
};

/** Returns the pack that is identical to a file, byte for byte, and what happened to it. */
async function packOfFile({ world }: Call, pdfSha256: string): Promise<TracedFile | undefined> {
  const file = orUnavailable(await world.archive.packOfFile(pdfSha256));
  if (!file) return undefined;
  const traced = orUnavailable(await world.archive.ledger(file, (ledger) => ledger.traced(file.pack)));
  return traced?.pack.pdfSha256 === pdfSha256 ? { workshop: file.workshop, ...traced } : undefined;
}

type TracedFile = TracedPack & { workshop: string };
