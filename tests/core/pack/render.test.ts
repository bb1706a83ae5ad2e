import { expect, test } from 'vitest';
import { render } from '../../../worker/core/pack/render.ts';

test.each([
  ['a name', 'document-page', {}, /^Cannot render document-page: "title" not defined/],
  ['a name within a sentence', 'annex', { articleId: 'annex-1' }, /^Cannot render annex: "number" not defined/],
])('render() names the template and %s that the view lacks', (_, template, view, message) => {
  expect(() => render(template, view)).toThrow(message);
});
