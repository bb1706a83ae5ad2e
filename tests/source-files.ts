import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

const ROOT = join(import.meta.dirname, '..');
const IMPORT = /^(?:import|export)\s[^'";=()]*\bfrom\s+'([^'\n]+)'|^import '([^'\n]+)'|\bimport\(\s*'([^'\n]+)'/gm;

/** A file of source by its path from the root. */
export interface SourceFile {
  path: string;
  /** The code alone, comments blanked. */
  code: string;
  /** Files that it imports, values and types alike, by path from the root. */
  imports: string[];
}

/** All TypeScript below some folders, without what a build makes. */
export function sourceFiles(...folders: string[]): SourceFile[] {
  return folders.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.ts') && !/(^|\/)(dist|generated|node_modules)\//.test(path))
      .sort()
      .map((path) => sourceFile(join(folder, path))),
  );
}

function sourceFile(path: string): SourceFile {
  const code = readFileSync(join(ROOT, path), 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, ''))
    .replace(/(^|\s)\/\/.*$/gm, '');
  const imports = [...code.matchAll(IMPORT)].map(([, from, bare, dynamic]) => from ?? bare ?? dynamic ?? '');
  return {
    path,
    code,
    imports: imports.filter((name) => name.startsWith('.')).map((name) => normalize(join(dirname(path), name))),
  };
}
