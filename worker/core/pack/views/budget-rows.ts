import type { WeighingResult } from '../../calc/weighing/weighing.ts';
import type { PackContext } from '../context.ts';
import { budgetName } from '../line-name.ts';
import type { View } from '../render.ts';

/** Returns the uncertainty budget of a weighing, the largest share of the centre of gravity first. */
export function budgetRows({ fmt }: PackContext, { budget, empty, standard, expanded }: WeighingResult): View {
  const rows = budget.map((contribution) => {
    const { component, quantity, massSensitivity, momentSensitivity } = contribution;
    const massKg = massSensitivity * contribution.standard;
    const armMm = ((momentSensitivity - empty.armMm * massSensitivity) / empty.massKg) * contribution.standard;
    return { component, quantity, massKg, armMm, standard: contribution.standard };
  });
  rows.sort((a, b) => Math.abs(b.armMm) - Math.abs(a.armMm));
  const share = (part: number, whole: number): string => fmt.plain(whole === 0 ? 0 : (part / whole) ** 2 * 100, 0);
  return {
    budget: rows.map(({ component, quantity, massKg, armMm, standard: u }) => ({
      source: fmt.value(budgetName(component)),
      standard: fmt.measure(quantity, u, { extra: 2 }),
      mass: fmt.number('mass', Math.abs(massKg), { extra: 2 }),
      arm: fmt.number('arm', Math.abs(armMm), { extra: 2 }),
      share: share(armMm, standard.armMm),
    })),
    combinedMass: fmt.number('mass', standard.massKg, { extra: 2 }),
    combinedArm: fmt.number('arm', standard.armMm, { extra: 2 }),
    expandedMass: fmt.number('mass', expanded.massKg, { extra: 2 }),
    expandedArm: fmt.number('arm', expanded.armMm, { extra: 2 }),
  };
}
