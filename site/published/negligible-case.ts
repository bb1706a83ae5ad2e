import { compute } from '../../worker/core/calc/results.ts';
import { generic } from '../../worker/core/gate/regimes/generic.ts';
import { findingsOf } from '../../worker/core/gate/rule.ts';
import { ruleInput } from '../../worker/core/gate/rule-input.ts';
import { negligibleChange } from '../../worker/core/gate/rules/equipment/negligible-change.ts';
import { type EquipmentInput, visitChanging } from './equipment-change-case.ts';
import { SETTINGS } from './read-visit.ts';

type NegligibleInput = Pick<EquipmentInput, 'units' | 'empty' | 'mac'> & {
  installed: { name: string; mass: number; arm: number };
};

/** Whether the rule of the gate calls one installed item a negligible change: 1 for yes, 0 for no. */
export function negligibleCase({ installed, ...input }: NegligibleInput): Record<string, number> {
  const visit = visitChanging({ ...input, installed: [installed] });
  const results = compute(visit, SETTINGS);
  const at = '2026-10-09T16:00:00+02:00';
  const findings = findingsOf(negligibleChange, ruleInput(visit, results, generic, { at, facts: {} }));
  return { isNegligible: findings.length };
}
