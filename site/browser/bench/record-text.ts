import { findNodeAtLocation, type Node, parseTree } from 'jsonc-parser';
import { stepsOf } from '../../../worker/core/record/pointer.ts';
import { jsonFault } from '../../../worker/edge/http/json-fault.ts';
import { structuralDefects } from '../../../worker/edge/http/json-structure.ts';
import type { Said } from '../thread/protocol.ts';

/** Range of the text, by offsets. */
export interface TextRange {
  from: number;
  to: number;
}

/** Text parsed as JSON: its value or the syntax errors, and the range of each part. */
export interface RecordText {
  /** Undefined if the text is not JSON that a record can have. */
  value: unknown;
  findings: Said[];
  placeOf(pointer: string): TextRange;
}

/** Parses the text of a record while it is typed. */
export function readText(text: string): RecordText {
  const findings = structuralDefects(text);
  // The parser that reports ranges is recursive, so it is not run on text that is nested too deep.
  if (findings.some(({ code }) => code === 'JSON_TOO_DEEP'))
    return { value: undefined, findings, placeOf: () => ({ from: 0, to: 1 }) };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return broken(text);
  }
  const tree = parseTree(text);
  return { value: findings.length > 0 ? undefined : value, findings, placeOf: (pointer) => placeIn(tree, pointer) };
}

function broken(text: string): RecordText {
  const { what, at } = jsonFault(text);
  const before = text.split('\n').slice(0, at.line - 1);
  const from = Math.min(
    text.length,
    before.reduce((length, line) => length + line.length + 1, at.column - 1),
  );
  const said: Said = {
    severity: 'blocks',
    code: 'JSON_BROKEN',
    pointer: '',
    sentence: `Cannot read the JSON: ${wordsOf(what)}`,
    remedy: 'Fix the text here; everything else is checked after that',
  };
  return { value: undefined, findings: [said], placeOf: () => ({ from, to: Math.min(text.length, from + 1) }) };
}

/** `CommaExpected` as `comma expected`. */
const wordsOf = (code: string): string => code.replaceAll(/(?<=[a-z])([A-Z])/g, ' $1').toLowerCase();

/** Returns the range of the value at a pointer. If it is missing, the range of its nearest parent. */
function placeIn(tree: Node | undefined, pointer: string): TextRange {
  if (!tree) return { from: 0, to: 1 };
  let node = tree;
  for (const step of stepsOf(pointer)) {
    const within = node.type === 'array' ? node.children?.[Number(step)] : findNodeAtLocation(node, [step]);
    if (!within) return stretchOf(node, false);
    node = within;
  }
  return stretchOf(node, true);
}

/**
 * Returns the range to mark: the whole value if the finding is about it; its first line or its key if the finding is
 * about something in it.
 */
function stretchOf(node: Node, isItself: boolean): TextRange {
  const named = node.parent?.type === 'property' ? node.parent : node;
  const isLong = node.type === 'object' || node.type === 'array';
  if (isItself && !isLong) return { from: named.offset, to: node.offset + node.length };
  return { from: named.offset, to: Math.max(named.offset + 1, node.offset + 1) };
}
