import { compute } from '../../worker/calc/results.ts';
import { generic } from '../../worker/gate/regimes/generic.ts';
import { negligibleChange } from '../../worker/gate/rules/negligible-change.ts';
import { printerFor } from '../../worker/units/print.ts';
import { SETTINGS } from '../calc/read-visit.ts';
import { type EquipmentInput, visitChanging } from './equipment-change-case.ts';

type NegligibleInput = Pick<EquipmentInput, 'units' | 'empty' | 'mac'> & {
  installed: { name: string; mass: number; arm: number };
};

/** Whether the rule of the gate calls one installed item a negligible change: 1 for yes, 0 for no. */
export function negligibleCase({ installed, ...input }: NegligibleInput): Record<string, number> {
  const visit = visitChanging({ ...input, installed: [installed] });
  const results = compute(visit, SETTINGS);
  const at = '2026-10-09T16:00:00+02:00';
  const say = printerFor(visit.units);
  const hits = negligibleChange.check({ visit, results, regime: generic, at, facts: {}, cautionCodes: new Set(), say });
  return { isNegligible: hits.length };
}
