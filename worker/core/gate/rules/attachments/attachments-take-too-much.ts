import { LIMITS } from '../../../limits.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said, type Value } from '../../../text/message.ts';
import { type AttachmentWork, type Hit, PRACTICE, type Rule } from '../../rule.ts';

const MILLION = 1_000_000;

export const attachmentsTakeTooMuch: Rule = {
  code: 'ATTACHMENTS_TAKE_TOO_MUCH',
  severity: 'blocks',
  meaning: 'The files of all attachments take more work to unpack and print than one pack may',
  remedy: m.attachmentsTakeTooMuch_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) => {
    const files = new Set((visit.attachments ?? []).map(({ sha256 }) => sha256));
    const total = (kind: keyof AttachmentWork): number =>
      [...files].reduce((sum, sha256) => {
        const fact = facts.attachments?.[sha256];
        return sum + (fact?.ok ? (fact.work?.[kind] ?? 0) : 0);
      }, 0);
    const pixels = total('unpackedPixels');
    const bytes = total('unpackedBytes');
    const objects = total('objects');
    const tokens = total('tokens');
    const hits: Hit[] = [];
    const hit = (sentence: Said, data: NonNullable<Hit['data']>): void =>
      void hits.push({ path: ['attachments'], sentence, data });
    if (!(pixels <= LIMITS.packUnpackedPixels))
      hit(
        said(
          m.attachmentsTakeTooMuch_transparentInterlacedPicturesMillion,
          millionsApart(pixels, LIMITS.packUnpackedPixels),
        ),
        { pixels },
      );
    if (!(bytes <= LIMITS.packUnpackedBytes))
      hit(said(m.attachmentsTakeTooMuch_papersUnpackMbTogether, millionsApart(bytes, LIMITS.packUnpackedBytes)), {
        bytes,
      });
    if (!(objects <= LIMITS.packObjects))
      hit(said(m.attachmentsTakeTooMuch_papersMillionObjectsTogether, millionsApart(objects, LIMITS.packObjects)), {
        objects,
      });
    if (!(tokens <= LIMITS.packTokens))
      hit(said(m.attachmentsTakeTooMuch_papersDrawnMillionSteps, millionsApart(tokens, LIMITS.packTokens)), { tokens });
    return hits;
  },
};

function millionsApart(value: number, limit: number): { millions: Value; millions2: Value } {
  const [millions, millions2] = figure.plainApart(value / MILLION, limit / MILLION, 1);
  return { millions, millions2 };
}
