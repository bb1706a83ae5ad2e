import { pointsOf } from '../../../worker/core/gate/points.ts';
import { element } from '../element.ts';
import type { Said } from '../thread/protocol.ts';

const WORDS = { blocks: 'Blocks', caution: 'Caution', note: 'Note' } as const;

/** Place of a finding, shown with it. */
export interface FindingPlace {
  /** Text of the link, such as `line 12`. */
  text: string;
  /** Goes to the place. */
  show: () => void;
}

/** Findings without the further places of the same one; the first states how many those are. */
export function withoutRepeats<Of extends Said>(findings: readonly Of[]): Of[] {
  const repeats = new Map(pointsOf(findings).flatMap(({ point, places }) => places.map((place) => [place, point])));
  return findings.flatMap((finding) => {
    if (repeats.has(finding)) return [];
    const more = [...repeats.values()].filter((point) => point === finding).length;
    return [more === 0 ? finding : { ...finding, remedy: `${finding.remedy}. Also at ${more} more places` }];
  });
}

/** Returns findings as list items: what is wrong, what to do, its place, and the rule behind it. */
export function findingItems(findings: readonly Said[], placeOf: (finding: Said) => FindingPlace): HTMLElement[] {
  return findings.map((finding) => {
    const { severity, code, sentence, remedy, source, acknowledgedBy, follows } = finding;
    const isAnswered = acknowledgedBy !== undefined;
    const { text, show } = placeOf(finding);
    const leads = element('button', { type: 'button', className: 'place' }, text);
    leads.addEventListener('click', show);
    const rule = source === undefined ? element('code', {}, code) : element('a', { href: `/rules#${code}` }, code);
    return element(
      'li',
      { className: `finding ${severity}${follows ? ' follows' : ''}` },
      element('p', {}, element('strong', {}, `${WORDS[severity]}${isAnswered ? ', accepted' : ''}`), ` ${sentence}`),
      element('p', { className: 'remedy' }, follows ? `Follows from ${follows.code}: solve that first` : remedy),
      element('p', { className: 'small' }, leads, ' · ', rule),
    );
  });
}

/** Whether nothing blocks a release; an unaccepted caution does. */
export const isSettled = (findings: readonly Said[]): boolean =>
  findings.every(({ severity, acknowledgedBy }) => severity === 'note' || acknowledgedBy !== undefined);

/**
 * Returns the one-line summary of the findings.
 *
 * @param isAlone whether the record was checked without the archive
 */
export function verdictOf(
  findings: readonly Said[],
  { isReadable = true, isAlone = false }: { isReadable?: boolean; isAlone?: boolean } = {},
): string {
  const count = (severity: Said['severity']): number =>
    findings.filter((said) => said.severity === severity && said.follows === undefined).length;
  const [blocks, cautions, notes] = [count('blocks'), count('caution'), counted(count('note'), 'note')];
  if (!isReadable) return `Not readable yet: ${counted(blocks, 'defect')}`;
  const open = findings.filter((said) => said.severity === 'caution' && !isSettled([said])).length;
  const toAnswer = `${counted(open, 'caution')} ${open === 1 ? 'waits' : 'wait'} for a decision`;
  if (blocks > 0) return `${counted(blocks, 'point')} against the release, ${toAnswer}, ${notes}`;
  if (open > 0) return `Not to be released yet: ${toAnswer}, ${notes}`;
  const where = isAlone ? ' in this record (what earlier packs left open is not known here)' : '';
  return `Nothing blocks the release${where}, ${counted(cautions, 'caution')}${cautions > 0 ? ' accepted' : ''}, ${notes}`;
}

const counted = (count: number, what: string): string =>
  `${count === 0 ? 'no' : count} ${what}${count === 1 ? '' : 's'}`;
