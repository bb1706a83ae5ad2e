import { expect, test } from 'vitest';
import { tighterText } from '../../../worker/core/pack/tighter-text.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { localeOf } from '../../../worker/core/text/locale.ts';

test('tighterText() says our names in the language of the reader, and those of the record as they were written', () => {
  const fmt = formatterFor({ mass: 'kg', arm: 'mm', volume: 'l' }, localeOf('de'));
  const limit = { name: 'Maximum mass', quantity: 'mass', sealed: 620, now: 600 } as const;
  expect(tighterText({ ...limit, id: 'maximum-mass' }, {}, fmt)).toMatch(/^Höchstmasse: /);
  expect(tighterText({ ...limit, id: 'station/baggage' }, {}, fmt)).toMatch(/^Maximum mass: /);
});
