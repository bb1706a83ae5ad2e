import { EVIDENCE } from '../../../record/not-required.ts';
import { evidenceRule } from '../../obligations/evidence-rule.ts';
import type { Rule } from '../../rule.ts';
import { kindUnstated } from './kind-unstated.ts';
import { notRequiredUnmatched } from './not-required-unmatched.ts';

/** What the work requires, by the table of obligations. */
export const OBLIGATION_RULES: readonly Rule[] = [kindUnstated, ...EVIDENCE.map(evidenceRule), notRequiredUnmatched];
