import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Handlebars from 'handlebars';

/**
 * Compiles every template to code, because a Worker may not compile text to code. One folder a document,
 * `<name>/<name>.hbs`; `partials/*.hbs` are shared. Writes `generated/templates.js` and its types.
 */
const FOLDER = import.meta.dirname;
const OUTPUT = join(FOLDER, 'generated');

/**
 * Template options. Strict: a name missing from the view throws. Choices and numbers belong to the view; `t` returns a
 * message.
 */
const OPTIONS = { strict: true, knownHelpersOnly: true, knownHelpers: { each: true, if: true, t: true } } as const;

const TYPES = `import type { TemplateSpecification } from 'handlebars';
export declare const templates: Record<string, TemplateSpecification>;
export declare const partials: Record<string, TemplateSpecification>;
`;

/** Returns the tree without the line and column of each node, which would be a quarter of the compiled code. */
function withoutPlaces(tree: unknown): unknown {
  return JSON.parse(JSON.stringify(tree, (key, value) => (key === 'loc' ? undefined : value)));
}

/** Pattern of a call of `t` in compiled code, with the id of its message. */
const MESSAGE = /(lookupProperty\(helpers,"t"\)[^"]*?\.call\([^"]*?,)"(\w+)"/g;

/** Returns compiled code with each message inserted for its id. */
function withMessages(code: string, ids: Set<string>): string {
  return code.replace(MESSAGE, (_, call: string, id: string) => {
    ids.add(id);
    return `${call}m.${id}`;
  });
}

function compileAll(files: readonly { name: string; path: string }[]): string {
  const entries = files.map(({ name, path }) => {
    const source = readFileSync(path, 'utf8');
    const ids = new Set<string>();
    const code = withMessages(String(Handlebars.precompile(withoutPlaces(Handlebars.parse(source)), OPTIONS)), ids);
    const missed = [...source.matchAll(/\{\{t "(\w+)"/g)].map(([, id = '']) => id).filter((id) => !ids.has(id));
    if (missed.length > 0)
      throw new Error(`Cannot compile ${path}: no call was found of the messages ${missed.join(', ')}`);
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
  `import * as m from '../../worker/core/text/generated/messages.ts';

export const templates = ${compileAll(folders)};
export const partials = ${compileAll(partials)};
`,
);
writeFileSync(join(OUTPUT, 'templates.d.ts'), TYPES);
