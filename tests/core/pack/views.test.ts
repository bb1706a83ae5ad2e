import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { packContext } from '../../../worker/core/pack/context.ts';
import { DOCUMENT_KINDS } from '../../../worker/core/pack/documents.ts';
import { render, type View, type ViewValue } from '../../../worker/core/pack/render.ts';
import { coverView } from '../../../worker/core/pack/views/cover.ts';
import { recordOfIssueView } from '../../../worker/core/pack/views/record-of-issue.ts';
import { AT, assessed, posted } from './fixture.ts';

const VISITS = readdirSync(join(import.meta.dirname, '../../../fixtures/visits')).map((file) =>
  file.replace('.json', ''),
);

/** A view that throws when a template asks for a name that it lacks: `strict` lets `if` and `each` pass in silence. */
function guarded(view: ViewValue, path: string): ViewValue {
  if (typeof view !== 'object') return view;
  if (Array.isArray(view)) return view.map((entry, index) => guarded(entry, `${path}[${index}]`));
  const own = Object.fromEntries(
    Object.entries(view).map(([name, value]) => [name, guarded(value, `${path}.${name}`)]),
  );
  return new Proxy(own, {
    get(target, name) {
      if (typeof name === 'string' && !(name in target) && !['toHTML', 'then'].includes(name)) {
        throw new Error(`The template asks for ${path}.${name}, which the view lacks`);
      }
      return Reflect.get(target, name);
    },
  }) as View;
}

/** Paths of whatever is neither text, list, choice nor object. */
function unfit(view: unknown, path: string): string[] {
  if (typeof view === 'string' || typeof view === 'boolean') return [];
  if (Array.isArray(view)) return view.flatMap((entry, index) => unfit(entry, `${path}[${index}]`));
  if (typeof view === 'object' && view !== null)
    return Object.entries(view).flatMap(([name, value]) => unfit(value, `${path}.${name}`));
  return [`${path} = ${String(view)}`];
}

describe.each(VISITS)('views of %s', (name) => {
  test('hold text, lists and choices alone, and every name that their templates use', async () => {
    const assessment = await assessed(posted(name), AT);
    const context = packContext(assessment, { of: { draftAt: AT }, recordSha256: assessment.recordSha256 });
    const body = DOCUMENT_KINDS.flatMap((kind) =>
      kind.instances(context).map((instance) => ({ ...instance, template: kind.template })),
    );
    const all = [
      {
        template: 'cover',
        id: 'cover',
        view: coverView(
          context,
          body.map(({ id, title }) => ({ id, title, isAboard: true })),
        ),
      },
      ...body,
      {
        template: 'record-of-issue',
        id: 'record-of-issue',
        view: recordOfIssueView(context, [{ id: 'a', title: 'A', sha256: 'f' }]),
      },
    ];
    for (const { template, id, view } of all) {
      expect(unfit(view, id)).toEqual([]);
      expect(render(template, guarded(view, id) as View)).toBe(render(template, view));
    }
  });
});
