import { DOCUMENT_KINDS } from '../../worker/core/pack/documents.ts';
import { sayIn } from '../../worker/core/text/formatter.ts';
import * as m from '../../worker/core/text/generated/messages.ts';
import { ENGLISH } from '../../worker/core/text/locale.ts';

const say = sayIn(ENGLISH);

/** Titles of documents of which a pack has several, each with its own, or that are not a kind. */
const TITLES: Readonly<Record<string, string>> = {
  cover: say(m.packDocuments_coverContents),
  'modification-record': 'Modification record',
  'record-of-issue': say(m.recordIssue),
};

/** Returns the title of a document by its template; undefined if no pack has it. */
export function documentTitle(template: string): string | undefined {
  const title = DOCUMENT_KINDS.find((kind) => kind.template === template)?.title;
  return TITLES[template] ?? (title && say(title));
}
