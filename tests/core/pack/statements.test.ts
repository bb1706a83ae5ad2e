import { describe, expect, test } from 'vitest';
import { releaseVisit } from '../../../worker/core/gate/release.ts';
import { packContext } from '../../../worker/core/pack/context.ts';
import { packDocuments } from '../../../worker/core/pack/pack-documents.ts';
import { LANGUAGES, languageOf } from '../../../worker/core/text/languages.ts';
import { localeOf } from '../../../worker/core/text/locale.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { assessed, posted } from './fixture.ts';

type Record_ = Record<string, unknown> & { release: Record<string, unknown>; workshop: Record<string, unknown> };

/** The documents of a released record, by id, as text without markup. */
async function printed(record: Record_, at: string): Promise<ReadonlyMap<string, string>> {
  const assessment = await assessed(record, at);
  const outcome = releaseVisit(assessment, { by: String(record.release.by), knowsOfNoHazard: true, at });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings, null, 1));
  const { recordSha256 } = assessment;
  const context = packContext(assessment, {
    of: { draftAt: at },
    recordSha256,
    released: outcome.released,
    locale: localeOf(languageOf(record.workshop.language as string | undefined)),
  });
  const { documents } = await packDocuments(context);
  const plain = (html: string): string => html.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ');
  return new Map(documents.map(({ id, html }) => [id, plain(html)]));
}

const visit = (name: string, language?: string): Record_ => {
  const record = posted(name) as Record_;
  return { ...record, workshop: { ...record.workshop, ...(language && { language }) } };
};

const DOUBT =
  /from memory|unverified|was not read|own wording|second-hand|as (?:reproduced|summarised)|Gedächtnis|ungeprüft|nicht gelesen/i;

describe.each(
  LANGUAGES.flatMap((language) => Object.entries(RELEASABLE_AT).map(([name, at]) => [language, name, at] as const)),
)('the pack in %s of %s', (language, name, at) => {
  test('prints no doubt, but one line of figures to confirm at most', async () => {
    const documents = await printed(visit(name, language), at);
    expect([...documents].filter(([, text]) => DOUBT.test(text)).map(([id]) => id)).toEqual([]);
    const asked = [...documents].filter(([, text]) => /to be confirmed by|zu bestätigende/.test(text));
    expect(asked.map(([id]) => id).filter((id) => id !== 'record-of-issue')).toEqual([]);
  });
});

describe('the statement above a signature', () => {
  const at = RELEASABLE_AT.glider ?? '';

  test('is in the language of the record, with the words of the rule after it', async () => {
    const german = (await printed(visit('glider', 'de'), at)).get('release-statement');
    expect(german).toMatch(
      /nach Part-ML ausgeführt wurden\..*Wortlaut der Vorschrift \(AMC M\.A\.801\(e\).*“?Certifies that the work/,
    );
    expect(german).toMatch(/Regelwerk: Europäische Union, Segelflugzeuge nach Part-ML/);
    const english = (await printed(visit('glider', 'en'), at)).get('release-statement');
    expect(english).toMatch(/carried out in accordance with Part-ML\..*Wording of the rule \(AMC M\.A\.801\(e\)/);
  });

  test('of a US inspection has the sentence of 14 CFR 43.11(a)(4), with the kind of the inspection, in the log book too', async () => {
    const record = visit('nose-wheel-full');
    const aircraft = { ...(record.aircraft as object), regime: 'us-experimental' };
    const further = [{ statement: 'inspection-airworthy', scope: 'The 100-hour inspection.' }];
    const documents = await printed(
      { ...record, aircraft, release: { ...record.release, further } },
      RELEASABLE_AT['nose-wheel-full'] ?? '',
    );
    const sentence = /I certify that this aircraft has been inspected .* airworthy condition: 100-hour inspection/;
    for (const id of ['release-statement', 'log-book-inserts']) expect(documents.get(id)).toMatch(sentence);
  });
});
