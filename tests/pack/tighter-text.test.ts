import { expect, test } from 'vitest';
import { tighterText } from '../../worker/pack/tighter-text.ts';
import { localeOf } from '../../worker/text/locale.ts';
import { printerFor } from '../../worker/text/print.ts';

test('tighterText() says our names in the language of the reader, and those of the record as they were written', () => {
  const say = printerFor({ mass: 'kg', arm: 'mm', volume: 'l' }, localeOf('de'));
  const limit = { name: 'Maximum mass', quantity: 'mass', sealed: 620, now: 600 } as const;
  expect(tighterText({ ...limit, id: 'maximum-mass' }, {}, say)).toMatch(/^Höchstmasse: /);
  expect(tighterText({ ...limit, id: 'station/baggage' }, {}, say)).toMatch(/^Maximum mass: /);
});
