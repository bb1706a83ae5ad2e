// Node script: node worker/text/build.ts
// Writes generated/messages.ts, terms.ts, faults.ts and languages.ts from the catalogues in messages/.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Catalogue, readCatalogue } from './catalogue.ts';
import { compileAll, type Declared } from './compile-all.ts';
import { HOUSE_FORMATS } from './house-formats.ts';
import { LANGUAGES } from './languages.ts';
import { readFormat } from './read-format.ts';

const OUTPUT = join(import.meta.dirname, 'generated');
const FOLDER = join(import.meta.dirname, 'messages');

const catalogues = LANGUAGES.map((language) => ({ language, ...readCatalogue(FOLDER, language) }));
const compiled = (kind: keyof Catalogue): Declared[] =>
  compileAll(catalogues.map((catalogue) => ({ language: catalogue.language, texts: catalogue[kind] })));

/** A table of messages by ids that are known at run time only. */
const table = (name: string, kind: keyof Catalogue): string =>
  `import type { Form } from '../message.ts';\n\nexport const ${name} = {\n${compiled(kind)
    .map(({ id, code }) => `  ${JSON.stringify(id)}: ${code},\n`)
    .join('')}} as const satisfies Record<string, readonly Form<Record<string, string | number>>[]>;\n`;

const formats = LANGUAGES.map((language) => {
  const format = { ...readFormat(language), ...HOUSE_FORMATS[language] };
  return `  ${language}: ${JSON.stringify(format)},\n`;
});

mkdirSync(OUTPUT, { recursive: true });
writeFileSync(
  join(OUTPUT, 'messages.ts'),
  `import type { Message, Value } from '../message.ts';\n\n${compiled('messages')
    .map(({ id, type, code }) => `export const ${id}: ${type} = ${code};\n`)
    .join('')}`,
);
writeFileSync(join(OUTPUT, 'terms.ts'), table('TERMS', 'terms'));
writeFileSync(join(OUTPUT, 'faults.ts'), table('FAULTS', 'faults'));
writeFileSync(
  join(OUTPUT, 'languages.ts'),
  `import { ${LANGUAGES.join(', ')} } from 'make-plural/cardinals';
import type { PluralCategory } from 'make-plural/pluralCategories';
import type { Language } from '../languages.ts';
import type { NumberFormat } from '../number-format.ts';

export const PLURALS: Readonly<Record<Language, (count: number) => PluralCategory>> = { ${LANGUAGES.join(', ')} };

export const FORMATS: Readonly<Record<Language, NumberFormat>> = {
${formats.join('')}};
`,
);
