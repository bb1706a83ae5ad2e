import { findNodeAtLocation, type Node, parseTree } from 'jsonc-parser';
import { stepsOf } from '../../core/record/pointer.ts';
import { jsonFault } from '../../edge/http/json-fault.ts';
import { structuralDefects } from '../../edge/http/json-structure.ts';
import { FileError } from './command.ts';
import type { Finding, Place } from './finding.ts';
import { textOf } from './read-file.ts';

/** A record file: text, value and positions. */
export interface RecordFile {
  file: string;
  text: string;
  value: unknown;
  /** Defects of the JSON that a record must not have, such as a key given twice. */
  defects: Finding[];
  placeOf(pointer: string): Place;
}

/** @throws FileError with line and column if the file is not valid JSON */
export function readRecordFile(path: string): RecordFile {
  const text = textOf(path);
  const file = path === '-' ? 'standard input' : path;
  const defects = structuralDefects(text);
  // The parsers that report places are recursive.
  if (defects.some(({ code }) => code === 'JSON_TOO_DEEP'))
    return { file, text, value: undefined, defects, placeOf: () => placeAt(text) };
  const value = parsed(file, text);
  const tree = parseTree(text);
  const placeOf = (pointer: string): Place => placeAt(text, tree && nodeAt(tree, pointer).offset);
  return { file, text, value, defects, placeOf };
}

function parsed(file: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    const { what, at } = jsonFault(text);
    throw new FileError(`Cannot read ${file}:${at.line}:${at.column}: not valid JSON: ${what}`);
  }
}

/** Returns the field of a JSON pointer, from its key on; if it is missing, its nearest parent. */
function nodeAt(tree: Node, pointer: string): Node {
  let node = tree;
  for (const step of stepsOf(pointer)) {
    const within = findNodeAtLocation(node, [node.type === 'array' ? Number(step) : step]);
    if (!within) break;
    node = within;
  }
  return node.parent?.type === 'property' ? node.parent : node;
}

function placeAt(text: string, offset = 0): Place {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
