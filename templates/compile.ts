import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Handlebars from 'handlebars';
import { type Program, translated } from './translate.ts';

/**
 * Compiles every template to code, because a Worker may not make code from text. One folder a document, `<name>/<name>.hbs`;
 * `partials/*.hbs` are shared. Writes `generated/templates.js` and its types.
 */
const FOLDER = import.meta.dirname;
const OUTPUT = join(FOLDER, 'generated');

/**
 * Strict: a name that the view lacks throws. No helpers beyond these: choices and numbers belong to the view. `words` is written
 * by the compiler alone, around the text of the template.
 */
const OPTIONS = { strict: true, knownHelpersOnly: true, knownHelpers: { each: true, if: true, words: true } } as const;

const TYPES = `import type { TemplateSpecification } from 'handlebars';
export declare const templates: Record<string, TemplateSpecification>;
export declare const partials: Record<string, TemplateSpecification>;
`;

/** The tree without the line and column of each node, which would be a quarter of the compiled code. */
function withoutPlaces(tree: Program): Program {
  return JSON.parse(JSON.stringify(tree, (key, value) => (key === 'loc' ? undefined : value)));
}

function compileAll(files: readonly { name: string; path: string }[]): string {
  const entries = files.map(({ name, path }) => {
    const { tree } = translated(readFileSync(path, 'utf8'));
    const code = Handlebars.precompile(withoutPlaces(tree), OPTIONS);
    return `  ${JSON.stringify(name)}: ${code},\n`;
  });
  return `{\n${entries.join('')}}`;
}

const folders = readdirSync(FOLDER, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && !['generated', 'partials'].includes(entry.name))
  .map(({ name }) => ({ name, path: join(FOLDER, name, `${name}.hbs`) }))
  .sort((a, b) => a.name.localeCompare(b.name));
const partials = readdirSync(join(FOLDER, 'partials'))
  .filter((file) => file.endsWith('.hbs'))
  .map((file) => ({ name: file.slice(0, -'.hbs'.length), path: join(FOLDER, 'partials', file) }))
  .sort((a, b) => a.name.localeCompare(b.name));

mkdirSync(OUTPUT, { recursive: true });
writeFileSync(
  join(OUTPUT, 'templates.js'),
  `export const templates = ${compileAll(folders)};\nexport const partials = ${compileAll(partials)};\n`,
);
writeFileSync(join(OUTPUT, 'templates.d.ts'), TYPES);
