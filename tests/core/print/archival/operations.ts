import { type Operand, operandReader } from './operand-reader.ts';

export interface Operation {
  operator: string;
  operands: Operand[];
}

/** Reads a content stream (ISO 32000-1, 7.8.2) into its operations. */
export function operationsIn(content: string): Operation[] {
  const reader = operandReader(content);
  const operations: Operation[] = [];
  let operands: Operand[] = [];
  while (!reader.isAtEnd()) {
    const operator = reader.keyword();
    if (operator === null) {
      operands.push(reader.operand());
      continue;
    }
    operations.push({ operator, operands });
    operands = [];
  }
  return operations;
}
