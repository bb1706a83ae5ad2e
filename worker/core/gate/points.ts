import type { Finding } from './finding.ts';

interface Folded extends Pick<Finding, 'code' | 'pointer'> {
  follows?: Finding['follows'] | undefined;
}

/** A point to deal with. */
export interface ReleasePoint<Of extends Folded> {
  point: Of;
  /** The same finding at other places. */
  places: Of[];
  /** Findings that follow from it. */
  consequences: Of[];
}

/** Folds findings under those from which they follow, in their order; a finding whose cause is not among them is a point. */
export function pointsOf<Of extends Folded>(findings: readonly Of[]): ReleasePoint<Of>[] {
  const isAmong = ({ follows }: Of): boolean =>
    follows !== undefined && findings.some((other) => isAt(other, follows) && other.follows === undefined);
  return findings
    .filter((finding) => !isAmong(finding))
    .map((point) => {
      const others = findings.filter((other) => isAmong(other) && other.follows && isAt(point, other.follows));
      return {
        point,
        places: others.filter(({ code }) => code === point.code),
        consequences: others.filter(({ code }) => code !== point.code),
      };
    });
}

const isAt = (finding: Folded, { code, pointer }: NonNullable<Finding['follows']>): boolean =>
  finding.code === code && finding.pointer === pointer;
