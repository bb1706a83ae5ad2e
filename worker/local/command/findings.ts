import { pointsOf } from '../../core/gate/points.ts';
import type { Finding, Place } from './finding.ts';
import type { Output } from './output.ts';
import type { RecordFile } from './record-file.ts';

export type PlacedFinding = Finding & Place;

/** Adds line and column to each finding. */
export function placed(findings: readonly Finding[], { placeOf }: RecordFile): PlacedFinding[] {
  return findings.map((finding) => ({ ...finding, ...placeOf(finding.pointer) }));
}

/** Prints each finding with its position and remedy. */
export function sayFindings(findings: readonly PlacedFinding[], { file }: RecordFile, output: Output): void {
  for (const { point, places, consequences } of pointsOf(findings)) {
    const { severity, code, pointer, line, column, sentence, remedy, acknowledgedBy } = point;
    output.say(`${severity.padEnd(8)}${code}  ${pointer}  ${file}:${line}:${column}`);
    const next = acknowledgedBy === undefined ? remedy : `Accepted by ${acknowledgedBy}`;
    output.say(`        ${sentence}`, `        ${next}`);
    if (places.length > 0) output.say(`        Also at ${placesText(places)}`);
    for (const other of consequences)
      output.say(`        From it follows ${other.code}  ${other.pointer}`, `          ${other.sentence}`);
  }
}

/** Places listed; more are counted. */
const LISTED = 5;

function placesText(places: readonly PlacedFinding[]): string {
  const left = places.length - LISTED;
  const listed = places.slice(0, LISTED).map(({ pointer }) => pointer);
  return `${listed.join(', ')}${left > 0 ? ` and ${left} more` : ''}`;
}

/**
 * One-line summary: blocks, open cautions, accepted cautions, notes.
 *
 * @param isAlone true if the record was checked without the archive
 */
export function countLine(findings: readonly Finding[], isAlone = false): string {
  const of = (wanted: string): readonly Finding[] =>
    pointsOf(findings.filter(({ severity }) => severity === wanted)).map(({ point }) => point);
  const blocks = of('blocks').length;
  const waiting = of('caution').filter(({ acknowledgedBy }) => acknowledgedBy === undefined).length;
  const accepted = of('caution').length - waiting;
  const against = [
    ...(blocks > 0 ? [`${blocks} ${blocks === 1 ? 'finding blocks' : 'findings block'} the release`] : []),
    ...(waiting > 0 ? [`${waiting} ${waiting === 1 ? 'caution waits' : 'cautions wait'} for a decision`] : []),
  ];
  const nothing = isAlone
    ? 'Nothing in this record blocks the release (open items of earlier packs not checked)'
    : 'Nothing blocks the release';
  const what = against.length > 0 ? against.join('; ') : nothing;
  return `${what}; accepted cautions: ${accepted}, notes: ${of('note').length}`;
}
