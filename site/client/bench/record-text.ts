import { findNodeAtLocation, type Node, type ParseError, parseTree, printParseErrorCode } from 'jsonc-parser';
import { structuralDefects } from '../../../worker/http/json-structure.ts';
import type { Said } from '../core/protocol.ts';

/** A stretch of the text, by offsets. */
export interface Stretch {
  from: number;
  to: number;
}

/** Text that was read as JSON: its value, or why it is none; and where each part of it stands. */
export interface RecordText {
  /** Undefined where the text is no JSON that a record can have. */
  value: unknown;
  findings: Said[];
  placeOf(pointer: string): Stretch;
}

/** Reads a record as it is being typed. */
export function readText(text: string): RecordText {
  const errors: ParseError[] = [];
  const tree = parseTree(text, errors, { disallowComments: true, allowTrailingComma: false });
  const [first] = errors;
  if (first) return broken(first, text.length);
  const findings = structuralDefects(text);
  const value = findings.length > 0 ? undefined : JSON.parse(text);
  return { value, findings, placeOf: (pointer) => placeIn(tree, pointer) };
}

function broken({ error, offset, length }: ParseError, end: number): RecordText {
  const from = Math.min(offset, end);
  const said: Said = {
    severity: 'blocks',
    code: 'JSON_BROKEN',
    pointer: '',
    sentence: `Cannot read the JSON: ${wordsOf(printParseErrorCode(error))}`,
    remedy: 'Mend the text here; everything else is looked at after that',
  };
  return {
    value: undefined,
    findings: [said],
    placeOf: () => ({ from, to: Math.min(end, from + Math.max(1, length)) }),
  };
}

/** `CommaExpected` as `comma expected`. */
const wordsOf = (code: string): string => code.replaceAll(/(?<=[a-z])([A-Z])/g, ' $1').toLowerCase();

/** Where a pointer leads; where nothing stands there, as for a field that is missing, the nearest part around it. */
function placeIn(tree: Node | undefined, pointer: string): Stretch {
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
function stretchOf(node: Node, isItself: boolean): Stretch {
  const named = node.parent?.type === 'property' ? node.parent : node;
  const isLong = node.type === 'object' || node.type === 'array';
  if (isItself && !isLong) return { from: named.offset, to: node.offset + node.length };
  return { from: named.offset, to: Math.max(named.offset + 1, node.offset + 1) };
}
