import type { Visit } from '../record/visit.ts';
import type { Regime, Statement } from './regimes/regime.ts';

/** A statement of a release, with its place in the record. */
export interface Stated {
  statement: Statement;
  path: readonly (string | number)[];
}

/** Finds the statements of a release, the first one first. Names that the regime lacks are left out: they are a finding. */
export function statedIn({ release }: Pick<Visit, 'release'>, regime: Regime): Stated[] {
  if (!release) return [];
  const named = [
    { id: release.statement, path: ['release', 'statement'] },
    ...(release.further ?? []).map(({ statement }, index) => ({
      id: statement,
      path: ['release', 'further', index, 'statement'],
    })),
  ];
  return named.flatMap(({ id, path }) => {
    const statement = regime.statements.find((each) => each.id === id);
    return statement ? [{ statement, path }] : [];
  });
}
