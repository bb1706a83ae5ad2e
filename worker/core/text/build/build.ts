// Node script: node worker/core/text/build/build.ts
// Writes generated/messages.ts, terms.ts, faults.ts, languages.ts and fields-LANGUAGE.ts from the catalogues in messages/.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { LANGUAGES } from '../languages.ts';
import { readCatalogue } from './catalogue.ts';
import { compileAll, type Declared } from './compile-all.ts';
import { HOUSE_FORMATS } from './house-formats.ts';
import { readFormat } from './read-format.ts';

const OUTPUT = join(import.meta.dirname, '../generated');
const FOLDER = join(import.meta.dirname, '../messages');

const catalogues = LANGUAGES.map((language) => ({ language, ...readCatalogue(FOLDER, language) }));

const compiled = (kind: 'messages' | 'terms' | 'faults'): Declared[] =>
  compileAll(catalogues.map((catalogue) => ({ language: catalogue.language, texts: catalogue[kind] })));

const imported = (code: string): string =>
  `import type { ${code.includes(': Value') ? 'Message, Value' : 'Message'} } from '../message.ts';\n\n${code}`;

/** Returns the messages that code names: one constant each, so that a page bundles only those that it shows. */
function constants(): string {
  return imported(
    compiled('messages')
      .map(({ id, type, code }) => `export const ${id}: ${type} = ${code};\n`)
      .join(''),
  );
}

/** Returns a table of messages whose ids are known only at run time. */
function table(name: string, kind: 'terms' | 'faults'): string {
  const all = compiled(kind);
  const types = all.map(({ id, type }) => `  readonly ${JSON.stringify(id)}: ${type};\n`).join('');
  const entries = all.map(({ id, code }) => `  ${JSON.stringify(id)}: ${code},\n`).join('');
  return imported(`export const ${name}: {\n${types}} = {\n${entries}};\n`);
}

function languages(): string {
  const names = LANGUAGES.join(', ');
  const formats = LANGUAGES.map((language) => {
    const format = { ...readFormat(language), ...HOUSE_FORMATS[language] };
    return `  ${language}: ${JSON.stringify(format)},\n`;
  });
  return `import { ${names} } from 'make-plural/cardinals';
import type { PluralCategory } from 'make-plural/pluralCategories';
import type { Language } from '../languages.ts';
import type { NumberFormat } from '../number-format.ts';

export const PLURALS: Readonly<Record<Language, (count: number) => PluralCategory>> = { ${names} };

export const FORMATS: Readonly<Record<Language, NumberFormat>> = {
${formats.join('')}};
`;
}

/** Returns titles and help of the fields, one file per language: the Worker has English only. */
function fields(language: string): string {
  const words = catalogues.find((catalogue) => catalogue.language === language)?.fields ?? {};
  const missing = Object.keys(catalogues[0]?.fields ?? {}).filter((id) => !words[id]?.title || !words[id]?.help);
  if (missing.length > 0) throw new Error(`${language} lacks the fields ${missing.join(', ')}`);
  return `export const FIELDS = ${JSON.stringify(words, null, 1)} as const;\n`;
}

mkdirSync(OUTPUT, { recursive: true });
const files = {
  'messages.ts': constants(),
  'terms.ts': table('TERMS', 'terms'),
  'faults.ts': table('FAULTS', 'faults'),
  'languages.ts': languages(),
  ...Object.fromEntries(LANGUAGES.map((language) => [`fields-${language}.ts`, fields(language)])),
};
for (const [name, code] of Object.entries(files)) writeFileSync(join(OUTPUT, name), code);
