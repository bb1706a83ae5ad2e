import Handlebars from 'handlebars';

/**
 * Rewrites the tree of a template so that every run of its text is looked up in the language of the reader: text and what is
 * filled into it, from one tag to the next, becomes one sentence with numbered places, since other languages have another order.
 * `{{levelling}}; found {{level}}` becomes `{{{words "{0}; found {1}" levelling level}}}`. Attributes that are read out loud are
 * treated alike. Nothing else of the HTML changes.
 */
export function translated(source: string): { tree: Program; texts: string[] } {
  const texts: string[] = [];
  const tree = Handlebars.parse(source) as Program;
  new Rewriter(texts).program(tree);
  return { tree, texts };
}

/** What is used of the tree of Handlebars. */
interface Statement {
  type: string;
  /** Of text. */
  value?: string;
  /** Of what is filled in: whether it is escaped, and its path. */
  escaped?: boolean;
  path?: { original: string };
  /** Of blocks. */
  program?: Program;
  inverse?: Program;
}

export interface Program {
  body: Statement[];
}

/** Attributes whose values are read by people. */
const READ_OUT = /(?:\s)(?:alt|aria-label|title|placeholder)="$/;

type Place = 'text' | 'tag' | 'read-out' | 'value';
type Part = string | Statement;

class Rewriter {
  #place: Place = 'text';
  /** What has been read of the tag that is open. */
  #tag = '';
  #run: Part[] = [];
  #out: Statement[] = [];
  readonly #texts: string[];

  constructor(texts: string[]) {
    this.#texts = texts;
  }

  program(program: Program): void {
    const outer = this.#out;
    this.#out = [];
    for (const statement of program.body) this.#statement(statement);
    this.#flush();
    program.body = this.#out;
    this.#out = outer;
  }

  #statement(statement: Statement): void {
    if (statement.type === 'ContentStatement') {
      this.#content(statement.value ?? '');
      return;
    }
    if (statement.type === 'MustacheStatement' && statement.escaped && this.#isReadable) {
      this.#run.push(statement);
      return;
    }
    this.#flush();
    this.#out.push(statement);
    if (statement.program) this.program(statement.program);
    if (statement.inverse) this.program(statement.inverse);
  }

  get #isReadable(): boolean {
    return this.#place === 'text' || this.#place === 'read-out';
  }

  #content(value: string): void {
    let from = 0;
    for (let at = 0; at < value.length; at++) {
      const next = this.#after(value[at] as string);
      if (next === this.#place) continue;
      // The sign that begins or ends a tag or a value belongs to the HTML.
      const wasReadable = this.#isReadable;
      const until = wasReadable ? at : at + 1;
      if (wasReadable) this.#run.push(value.slice(from, until));
      else this.#markup(value.slice(from, until));
      from = until;
      this.#flush();
      this.#place = next;
    }
    if (this.#isReadable) this.#run.push(value.slice(from));
    else this.#markup(value.slice(from));
  }

  /** Where a reader of HTML is after one more sign. */
  #after(sign: string): Place {
    if (this.#place === 'text') {
      this.#tag = '';
      return sign === '<' ? 'tag' : 'text';
    }
    if (this.#place === 'tag') {
      this.#tag += sign;
      if (sign === '>') return 'text';
      if (sign !== '"') return 'tag';
      return READ_OUT.test(this.#tag) ? 'read-out' : 'value';
    }
    return sign === '"' ? 'tag' : this.#place;
  }

  #markup(html: string): void {
    if (html !== '') this.#out.push(contentOf(html));
  }

  /** Writes the run of text that ends here, as a sentence where it has words. */
  #flush(): void {
    const run = this.#run;
    this.#run = [];
    if (!run.some((part) => typeof part === 'string' && /\p{L}/u.test(part))) {
      this.#out.push(...run.map((part) => (typeof part === 'string' ? contentOf(part) : part)));
      return;
    }
    const values: string[] = [];
    const whole = run
      .map((part) => (typeof part === 'string' ? part : `{${values.push(part.path?.original ?? '') - 1}}`))
      .join('');
    const text = whole.trim();
    const before = whole.slice(0, whole.indexOf(text));
    const after = whole.slice(before.length + text.length);
    this.#texts.push(text);
    this.#markup(before);
    const call = `{{{words ${JSON.stringify(text)} ${values.join(' ')}}}}`;
    this.#out.push(...(Handlebars.parse(call) as Program).body);
    this.#markup(after);
  }
}

function contentOf(value: string): Statement {
  return { type: 'ContentStatement', value };
}
