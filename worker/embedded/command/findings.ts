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
    output.say(`        ${sentence}`, `        ${remedy}`);
  }
}

/** What it comes to, in a line. */
export function countLine(findings: readonly Finding[]): string {
  const count = (wanted: string): number => findings.filter(({ severity }) => severity === wanted).length;
  const against = count('blocks');
  const what = against === 0 ? 'Nothing stands' : `${against} ${against === 1 ? 'finding stands' : 'findings stand'}`;
  return `${what} against the release; cautions: ${count('caution')}, notes: ${count('note')}`;
}
