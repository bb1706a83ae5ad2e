/** Version of the rules of the gate, printed in every pack and part of what an inspector releases; moves with any rule. */
export const RULE_SET = '2026-12.3';
