import type { Finding, Place } from './finding.ts';
import type { Output } from './output.ts';
import type { RecordFile } from './record-file.ts';

export type PlacedFinding = Finding & Place;

/** Findings with where they are in the file. */
export function placed(findings: readonly Finding[], { placeOf }: RecordFile): PlacedFinding[] {
  return findings.map((finding) => ({ ...finding, ...placeOf(finding.pointer) }));
}

/** Says each with its place, what is wrong, and what to do. */
export function sayFindings(findings: readonly PlacedFinding[], { file }: RecordFile, output: Output): void {
  for (const { severity, code, pointer, line, column, sentence, remedy, acknowledgedBy } of findings) {
    output.say(`${severity.padEnd(8)}${code}  ${pointer}  ${file}:${line}:${column}`);
    const next = acknowledgedBy === undefined ? remedy : `Accepted by ${acknowledgedBy}`;
    output.say(`        ${sentence}`, `        ${next}`);
  }
}

/**
 * What it comes to, in a line: that nothing stands against the release is said only where it can be released.
 *
 * @param isAlone whether the record was looked at without the archive
 */
export function countLine(findings: readonly Finding[], isAlone = false): string {
  const of = (wanted: string): readonly Finding[] => findings.filter(({ severity }) => severity === wanted);
  const blocks = of('blocks').length;
  const waiting = of('caution').filter(({ acknowledgedBy }) => acknowledgedBy === undefined).length;
  const accepted = of('caution').length - waiting;
  const against = [
    ...(blocks > 0 ? [`${blocks} ${blocks === 1 ? 'finding stands' : 'findings stand'} against the release`] : []),
    ...(waiting > 0 ? [`${waiting} ${waiting === 1 ? 'caution waits' : 'cautions wait'} for a decision`] : []),
  ];
  const nothing = isAlone
    ? 'Nothing stands against the release in this record; what earlier packs left open is not known here'
    : 'Nothing stands against the release';
  const what = against.length > 0 ? against.join('; ') : nothing;
  return `${what}; accepted cautions: ${accepted}, notes: ${of('note').length}`;
}
