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
    const millions = (value: number): Value => figure.plain(value / MILLION, 1);
    const pixels = total('unpackedPixels');
    const bytes = total('unpackedBytes');
    const objects = total('objects');
    const tokens = total('tokens');
    const hits: Hit[] = [];
    const hit = (sentence: Said, data: NonNullable<Hit['data']>): void =>
      void hits.push({ path: ['attachments'], sentence, data });
    if (!(pixels <= LIMITS.packUnpackedPixels))
      hit(
        said(m.attachmentsTakeTooMuch_transparentInterlacedPicturesMillion, {
          millions: millions(pixels),
          millions2: millions(LIMITS.packUnpackedPixels),
        }),
        { pixels },
      );
    if (!(bytes <= LIMITS.packUnpackedBytes))
      hit(
        said(m.attachmentsTakeTooMuch_papersUnpackMbTogether, {
          millions: millions(bytes),
          millions2: millions(LIMITS.packUnpackedBytes),
        }),
        { bytes },
      );
    if (!(objects <= LIMITS.packObjects))
      hit(
        said(m.attachmentsTakeTooMuch_papersMillionObjectsTogether, {
          millions: millions(objects),
          millions2: millions(LIMITS.packObjects),
        }),
        { objects },
      );
    if (!(tokens <= LIMITS.packTokens))
      hit(
        said(m.attachmentsTakeTooMuch_papersDrawnMillionSteps, {
          millions: millions(tokens),
          millions2: millions(LIMITS.packTokens),
        }),
        { tokens },
      );
    return hits;
  },
};
