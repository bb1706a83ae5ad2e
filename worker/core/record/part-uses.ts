import type { Visit } from './visit.ts';

/** Identifiers of the modifications, findings and tasks for which a part was used. */
export function usesOf(
  { modifications = [], findings = [], inspection }: Pick<Visit, 'modifications' | 'findings' | 'inspection'>,
  part: string,
): string[] {
  const fitted = modifications.filter(
    ({ parts, changes }) =>
      parts?.includes(part) ||
      changes.some((change) =>
        change.kind === 'exchanged'
          ? change.in.some((each) => each.part === part)
          : (change.kind === 'installed' || change.kind === 'replaced') && change.part === part,
      ),
  );
  const named = [...findings, ...(inspection?.tasks ?? [])].filter(({ parts }) => parts?.includes(part));
  return [...fitted, ...named].map(({ id }) => id);
}
