/** Share by which a figure may differ from the one that was accepted: it is the same figure, rounded. Our own choice. */
const SAME_SHARE = 0.005;

/** Figures of the findings with a code, in their order: an acceptance is of these figures. */
export function figuresOf(
  findings: readonly { code: string; data?: Readonly<Record<string, unknown>> }[],
  code: string,
): number[] {
  return findings
    .filter((finding) => finding.code === code)
    .flatMap(({ data = {} }) => Object.values(data).filter((value) => typeof value === 'number'));
}

/** Whether accepted figures are still those of the findings. */
export function isOfFigures(accepted: readonly number[] | undefined, now: readonly number[]): boolean {
  if (now.length === 0) return true;
  return (
    accepted?.length === now.length &&
    now.every((figure, index) => Math.abs(figure - (accepted[index] ?? 0)) <= SAME_SHARE * Math.abs(figure))
  );
}
