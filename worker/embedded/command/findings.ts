import type { Output } from './output.ts';
import type { Place, RecordFile } from './record-file.ts';

export interface Finding {
  code: string;
  severity: string;
  pointer: string;
  sentence: string;
  remedy: string;
}

export type PlacedFinding = Finding & Place;

/** Findings with where they are in the file. */
export function placed(findings: readonly Finding[], { placeOf }: RecordFile): PlacedFinding[] {
  return findings.map((finding) => ({ ...finding, ...placeOf(finding.pointer) }));
}

/** Says each with its place, what is wrong, and what to do. */
export function sayFindings(findings: readonly PlacedFinding[], { file }: RecordFile, output: Output): void {
  for (const { severity, code, pointer, line, column, sentence, remedy } of findings) {
    output.say(`${severity.padEnd(8)}${code}  ${pointer}  ${file}:${line}:${column}`);
    output.say(`        ${sentence}\n        ${remedy}`);
  }
}

/** How many of each kind, in a line. */
export function countLine(findings: readonly Finding[]): string {
  const count = (wanted: string): number => findings.filter(({ severity }) => severity === wanted).length;
  return `${count('blocks')} findings stand against the release, ${count('caution')} cautions, ${count('note')} notes`;
}
