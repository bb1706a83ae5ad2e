/** Version of the rules, printed in every pack and part of what an inspector releases. Changes with any rule. */
export const RULE_SET = '2026-12.7';
