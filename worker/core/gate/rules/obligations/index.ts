import { EVIDENCE } from '../../../record/not-owed.ts';
import type { Rule } from '../../rule.ts';
import { kindUnstated } from './kind-unstated.ts';
import { notOwedUnmatched } from './not-owed-unmatched.ts';
import { owedRule } from './owed-rule.ts';

/** What the work owes, by the table of obligations. */
export const OBLIGATION_RULES: readonly Rule[] = [kindUnstated, ...EVIDENCE.map(owedRule), notOwedUnmatched];
