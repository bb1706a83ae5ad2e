import { expect, test } from 'vitest';
import { hits, hitsIn } from '../../../worker/core/gate/hits.ts';
import * as m from '../../../worker/core/text/generated/messages.ts';
import { said } from '../../../worker/core/text/message.ts';

const sentence = said(m.beforeFlight);

test('hits() takes one, several or none of an item', () => {
  expect(hits([0, 1, 2], (count) => (count === 1 ? 'one' : Array<string>(count).fill('more')))).toEqual([
    'one',
    'more',
    'more',
  ]);
  expect(hits(undefined, () => 'one')).toEqual([]);
  expect(hits(['a', 'b'], (item) => (item === 'a' ? undefined : item))).toEqual(['b']);
});

test('hitsIn() completes the path by the index of the entry and the way from there', () => {
  const found = hitsIn(['wiring', 'wires'], ['kept', 'bare', 'split'], (wire) => {
    if (wire === 'kept') return undefined;
    if (wire === 'bare') return { sentence, field: 'mark', data: { wire } };
    return [{ sentence }, { sentence, field: ['ends', 1] }];
  });
  expect(found).toEqual([
    { path: ['wiring', 'wires', 1, 'mark'], sentence, data: { wire: 'bare' } },
    { path: ['wiring', 'wires', 2], sentence },
    { path: ['wiring', 'wires', 2, 'ends', 1], sentence },
  ]);
});
