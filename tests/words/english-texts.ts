import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { translated } from '../../templates/translate.ts';

/** An English text that readers meet, with where it stands. */
export interface EnglishText {
  text: string;
  where: string;
}

const ROOT = join(import.meta.dirname, '../..');
/** Code whose texts readers of packs and pages meet. */
const CODE = ['worker', 'site/client'];
const TAG = /\b(?:words|phrase|inEnglish)`/g;

/** Every text of templates and code, in the order of the files. */
export function englishTexts(): EnglishText[] {
  return [...templateTexts(), ...CODE.flatMap((folder) => codeTexts(folder))];
}

const filesIn = (folder: string, ending: string): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith(ending) && !/(^|\/)(dist|generated|node_modules)\//.test(path))
    .sort()
    .map((path) => `${folder}/${path}`);

function templateTexts(): EnglishText[] {
  return filesIn('templates', '.hbs').flatMap((where) =>
    translated(readFileSync(join(ROOT, where), 'utf8')).texts.map((text) => ({ text, where })),
  );
}

function codeTexts(folder: string): EnglishText[] {
  return filesIn(folder, '.ts').flatMap((where) => {
    const code = readFileSync(join(ROOT, where), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
    return [...code.matchAll(TAG)].map(({ 0: tag, index }) => ({ text: textAt(code, index + tag.length), where }));
  });
}

/** The text of a tagged template that begins here, with its places numbered; what is filled in may hold templates itself. */
export function textAt(code: string, start: number): string {
  let text = '';
  let places = 0;
  for (let at = start; code[at] !== '`'; at++) {
    if (code.startsWith('${', at)) {
      text += `{${places++}}`;
      at = endOfPlace(code, at + 2);
    } else if (code[at] === '\\') {
      const escaped = /^\\(?:u([0-9a-f]{4})|(.))/.exec(code.slice(at, at + 6));
      text += escaped?.[1] ? String.fromCharCode(Number.parseInt(escaped[1], 16)) : (escaped?.[2] ?? '');
      at += escaped?.[1] ? 5 : 1;
    } else text += code[at];
  }
  return text;
}

/** Where the brace stands that closes a place. */
function endOfPlace(code: string, start: number): number {
  let depth = 0;
  for (let at = start; at < code.length; at++) {
    if (code[at] === '`') at = endOfTemplate(code, at + 1);
    else if (code[at] === '{') depth++;
    else if (code[at] === '}' && depth-- === 0) return at;
  }
  throw new Error('A template does not end');
}

function endOfTemplate(code: string, start: number): number {
  for (let at = start; at < code.length; at++) {
    if (code[at] === '\\') at++;
    else if (code.startsWith('${', at)) at = endOfPlace(code, at + 2);
    else if (code[at] === '`') return at;
  }
  throw new Error('A template does not end');
}
