import { findNodeAtLocation, type Node, parseTree } from 'jsonc-parser';
import { jsonFault } from '../../../worker/edge/http/json-fault.ts';
import { structuralDefects } from '../../../worker/edge/http/json-structure.ts';
import type { Said } from '../thread/protocol.ts';

/** A stretch of the text, by offsets. */
export interface TextRange {
  from: number;
  to: number;
}

/** Text that was read as JSON: its value, or why it is none; and where each part of it stands. */
export interface RecordText {
  /** Undefined where the text is no JSON that a record can have. */
  value: unknown;
  findings: Said[];
  placeOf(pointer: string): TextRange;
}

/** Reads a record as it is being typed. */
export function readText(text: string): RecordText {
  const findings = structuralDefects(text);
  // The parser that tells places calls itself for each level.
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
    remedy: 'Mend the text here; everything else is looked at after that',
  };
  return { value: undefined, findings: [said], placeOf: () => ({ from, to: Math.min(text.length, from + 1) }) };
}

/** `CommaExpected` as `comma expected`. */
const wordsOf = (code: string): string => code.replaceAll(/(?<=[a-z])([A-Z])/g, ' $1').toLowerCase();

/** Where a pointer leads; where nothing stands there, as for a field that is missing, the nearest part around it. */
function placeIn(tree: Node | undefined, pointer: string): TextRange {
  if (!tree) return { from: 0, to: 1 };
  let node = tree;
  for (const step of pointer.split('/').slice(1).map(unescaped)) {
    const within = node.type === 'array' ? node.children?.[Number(step)] : findNodeAtLocation(node, [step]);
    if (!within) return stretchOf(node, false);
    node = within;
  }
  return stretchOf(node, true);
}

const unescaped = (step: string): string => step.replaceAll('~1', '/').replaceAll('~0', '~');

/** The whole value where it is meant itself; its first line, or the key that names it, where only something in it is. */
function stretchOf(node: Node, isItself: boolean): TextRange {
  const named = node.parent?.type === 'property' ? node.parent : node;
  const isLong = node.type === 'object' || node.type === 'array';
  if (isItself && !isLong) return { from: named.offset, to: node.offset + node.length };
  return { from: named.offset, to: Math.max(named.offset + 1, node.offset + 1) };
}
