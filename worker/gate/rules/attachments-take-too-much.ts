import { LIMITS } from '../../limits.ts';
import { phrase } from '../../words/words.ts';
import { type AttachmentWork, type Hit, PRACTICE, type Rule } from '../rule.ts';

const MILLION = 1_000_000;

export const attachmentsTakeTooMuch: Rule = {
  code: 'ATTACHMENTS_TAKE_TOO_MUCH',
  severity: 'blocks',
  meaning: 'The files of all attachments together take more to unpack and to print than one pack may',
  remedy: phrase`Hand in plainer copies: pictures as JPEG, papers with fewer pages; or leave some out`,
  source: PRACTICE,
  check: ({ visit, facts, say }) => {
    const files = new Set((visit.attachments ?? []).map(({ sha256 }) => sha256));
    const total = (kind: keyof AttachmentWork): number =>
      [...files].reduce((sum, sha256) => {
        const fact = facts.attachments?.[sha256];
        return sum + (fact?.ok ? (fact.work?.[kind] ?? 0) : 0);
      }, 0);
    const millions = (value: number): string => say.plain(value / MILLION, 1);
    const pixels = total('unpackedPixels');
    const bytes = total('unpackedBytes');
    const objects = total('objects');
    const tokens = total('tokens');
    const hits: Hit[] = [];
    const hit = (sentence: string, data: NonNullable<Hit['data']>): void =>
      void hits.push({ path: ['attachments'], sentence, data });
    if (!(pixels <= LIMITS.packUnpackedPixels))
      hit(
        say.words`The transparent or interlaced pictures have ${millions(pixels)} million pixels together; a pack holds ${millions(LIMITS.packUnpackedPixels)} million`,
        { pixels },
      );
    if (!(bytes <= LIMITS.packUnpackedBytes))
      hit(
        say.words`The papers unpack to ${millions(bytes)} MB together; a pack holds ${millions(LIMITS.packUnpackedBytes)} MB`,
        { bytes },
      );
    if (!(objects <= LIMITS.packObjects))
      hit(
        say.words`The papers have ${millions(objects)} million objects together; a pack holds ${millions(LIMITS.packObjects)} million`,
        { objects },
      );
    if (!(tokens <= LIMITS.packTokens))
      hit(
        say.words`The papers are drawn in ${millions(tokens)} million steps together; a pack holds ${millions(LIMITS.packTokens)} million`,
        { tokens },
      );
    return hits;
  },
};
