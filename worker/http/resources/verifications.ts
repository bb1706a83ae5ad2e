import * as z from 'zod';
import type { KeptPack } from '../../archive/ledger/ledger-calls.ts';
import { json, reached } from '../answer.ts';
import { requestBody } from '../request-body.ts';
import type { Call, Operation } from '../route.ts';

const VerificationRequest = z.strictObject({
  pdfSha256: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .meta({ description: 'SHA-256 of the file as it is: the file itself need not leave whoever has it' }),
});

const Verification = z
  .object({
    verdict: z.enum(['genuine', 'superseded', 'withdrawn', 'unknown']),
    pack: z.string().optional(),
    workshop: z.string().optional(),
    issuedAt: z.string().optional(),
    supersededBy: z.string().optional().meta({ description: 'What replaces it' }),
    withdrawal: z.object({ at: z.string(), by: z.string(), reason: z.string() }).optional(),
  })
  .meta({ title: 'Verification' });

export const verify: Operation = {
  id: 'verify',
  summary: 'Is this file a pack of ours, unaltered, and does it stand?',
  description:
    'Asked by digest. Unknown is every file that is not, byte for byte, a sealed pack: whether it is an altered one its own seal tells, with the published keys of the workshop (the verify page and `npm run verify` do both).',
  body: { type: 'application/json', description: 'Digest of the file', schema: VerificationRequest },
  answers: { 200: { description: 'The verdict', content: { 'application/json': Verification } } },
  problems: ['malformed-json', 'body-too-large', 'unsupported-media-type', 'request-not-valid'],
  async handle(call) {
    const { pdfSha256 } = await requestBody(call.request, VerificationRequest);
    const found = await packOfFile(call, pdfSha256);
    if (!found) return json({ verdict: 'unknown' });
    const { workshop, kept, later } = found;
    const { withdrawal, summary } = kept;
    const supersededBy = kept.supersededBy ?? later;
    return json({
      verdict: withdrawal ? 'withdrawn' : supersededBy ? 'superseded' : 'genuine',
      pack: summary.pack,
      workshop,
      issuedAt: summary.issuedAt,
      ...(supersededBy !== undefined && { supersededBy }),
      ...(withdrawal && { withdrawal }),
    });
  },
};

/** The pack that a file is, byte for byte, and the later pack of the aircraft where there is one. */
async function packOfFile(
  { world }: Call,
  pdfSha256: string,
): Promise<{ workshop: string; kept: KeptPack; later: string | undefined } | undefined> {
  const file = reached(await world.archive.packOfFile(pdfSha256));
  if (!file) return undefined;
  const [kept, { newest }] = reached(
    await world.archive.ledger(file, (ledger) => Promise.all([ledger.pack(file.pack), ledger.overview()])),
  );
  if (kept?.pdfSha256 !== pdfSha256) return undefined;
  const isLater = newest !== null && newest.summary.number > kept.summary.number;
  return { workshop: file.workshop, kept, later: isLater ? newest.summary.pack : undefined };
}
