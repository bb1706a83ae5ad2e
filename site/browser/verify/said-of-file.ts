import type { Verification } from '../../../worker/client/client.ts';
import type { Verdict } from '../../../worker/core/seal/verify.ts';
import { printTimestamp } from '../../../worker/core/text/dates.ts';
import { sentence } from '../../../worker/core/text/sentence.ts';

/** Text of the page about a file. */
export interface SaidOfFile {
  headline: string;
  lines: string[];
  state: 'good' | 'bad';
}

/**
 * Returns the text about a file: from the archive, which knows the status of the pack, and from its seal, which shows
 * who sealed it.
 *
 * @param own undefined if the workshop that the file names publishes no keys here
 */
export function saidOfFile(said: Verification, own: Verdict | undefined): SaidOfFile {
  if (said.verdict === 'unknown') return unknownFile(own);
  // The archive knows the file by its digest; the page checks the seal itself.
  if (own?.kind !== 'genuine' || own.claims.workshop !== said.workshop)
    return {
      headline: 'Not proved',
      lines: [
        `The archive knows the file as ${said.pack ?? ''}, but its seal is not by a key that the workshop publishes. Do not rely on it: ask the operator of the archive.`,
      ],
      state: 'bad',
    };
  const seal = `Sealed by ${said.workshopName ?? ''} (${said.workshop ?? ''}) on ${timestampText(said.issuedAt)}, released by ${said.releasedBy ?? ''}. Key: ${own.kid}.`;
  const note = 'The name of the workshop is that in this archive; the letterhead is the workshop’s own statement.';
  const outcome = standing(said);
  return { ...outcome, lines: [...outcome.lines, seal, note] };
}

function standing({
  verdict,
  pack = '',
  supersededBy,
  laterWithdrawn,
  corrected = [],
  withdrawal,
}: Verification): SaidOfFile {
  if (verdict === 'genuine')
    return {
      headline: 'Genuine',
      lines: [`${pack}: every byte is as sealed, and nothing replaces it.`],
      state: 'good',
    };
  if (verdict === 'withdrawn')
    return {
      headline: 'Withdrawn',
      lines: [
        `${pack} is unchanged. ${withdrawal?.by ?? ''} withdrew it on ${timestampText(withdrawal?.at)}: ${sentence(withdrawal?.reason ?? '')} Do not fly on it: ask the workshop.`,
      ],
      state: 'bad',
    };
  if (laterWithdrawn !== undefined)
    return {
      headline: 'Genuine, but there is no current release',
      lines: [
        `${pack} is unchanged. The later ${laterWithdrawn} was withdrawn, and the aircraft has no current release: do not fly on this one, and ask the workshop.`,
      ],
      state: 'bad',
    };
  if (supersededBy !== undefined)
    return {
      headline: 'Genuine, but superseded',
      lines: [`${pack} is unchanged. ${supersededBy} replaces it: ask the workshop for that.`],
      state: 'bad',
    };
  return {
    headline: 'Genuine, from figures that were corrected',
    lines: [
      `${pack} is unchanged. It was calculated from an earlier release that was corrected or withdrawn since (${corrected.join(', ')}): do not load the aircraft by its figures, and ask the workshop.`,
    ],
    state: 'bad',
  };
}

const timestampText = (iso: string | undefined): string =>
  iso === undefined ? 'a day that is not known' : printTimestamp(iso);

/** Returns the text about a file that is not in the archive. */
function unknownFile(own: Verdict | undefined): SaidOfFile {
  const bad = (headline: string, line: string): SaidOfFile => ({ headline, lines: [line], state: 'bad' });
  if (own?.kind === 'altered')
    return bad(
      'Altered',
      `It says that it is ${own.claims.pack}, and it is not what was sealed. It differs in: ${own.parts.join('; ')}. Do not rely on it: ask the workshop for the pack.`,
    );
  if (own?.kind === 'genuine')
    return bad(
      'Sealed, and not in this archive',
      `${own.claims.pack} is as the workshop ${own.claims.workshop} sealed it, with the key ${own.kid}. This archive does not have it.`,
    );
  if (own?.kind === 'seal-false' || own?.kind === 'key-unknown')
    return bad('False seal', 'The seal in the file is not by a key of the workshop that it names.');
  return bad('Unknown', 'The file has no seal of a workshop of this archive, and is not one of its packs.');
}
