import browser from './browser.json' with { type: 'json' };
import documents from './documents.json' with { type: 'json' };
import files from './files.json' with { type: 'json' };
import pages from './pages.json' with { type: 'json' };
import rules from './rules.json' with { type: 'json' };
import terms from './terms.json' with { type: 'json' };
import views from './views.json' with { type: 'json' };

/**
 * German texts by the English ones, which are their keys, as they stand in templates and code. `{0}` and so on are what is filled
 * in, in any order. A key that begins with the name of a document and a stroke holds in that document alone.
 *
 * Not here, because they are printed as they were written: what a record says, the statements and sources of a regime (what is
 * signed is the text of the rule, not somebody's rendering of it), and names of papers.
 */
export const GERMAN: Readonly<Record<string, string>> = {
  ...documents,
  ...views,
  ...terms,
  ...rules,
  ...files,
  ...pages,
  ...browser,
};

/** English texts that are kept as they were filled in, with what is the matter with a file. */
export const KEPT: readonly string[] = Object.keys(files);
