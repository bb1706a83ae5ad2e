import { expect, test } from 'vitest';
import { cutOutBlock } from '../../../../worker/core/print/measure/cut-out.ts';
import { flow } from '../../../../worker/core/print/measure/flow.ts';
import type { Item } from '../../../../worker/core/print/measure/item.ts';
import { paperOf, pointsFromMm } from '../../../../worker/core/print/paper.ts';
import { childElements } from '../../../../worker/core/print/parse/markup.ts';
import { parseArticle } from '../../../../worker/core/print/parse/parse-article.ts';
import { BODY } from '../../../../worker/core/print/style/text-style.ts';
import { sayIn } from '../../../../worker/core/text/formatter.ts';
import { ENGLISH } from '../../../../worker/core/text/locale.ts';

const rulesIn = (items: readonly Item[]): Extract<Item, { kind: 'rule' }>[] =>
  items.flatMap((item) => (item.kind === 'group' ? rulesIn(item.items) : item.kind === 'rule' ? [item] : []));

test('cutOutBlock() outlines the true size', () => {
  const { columnPt, bodyPt } = paperOf('A4');
  const html = '<article><div class="cut" data-width-mm="148" data-height-mm="105"><p>Text</p></div></article>';
  const [cut] = childElements(parseArticle(html));
  if (!cut) throw new Error('The article must hold a cut-out');
  const pictureOf = (): never => {
    throw new Error('No picture is shown');
  };
  const setting = {
    columnPt,
    bodyPt,
    scale: 1,
    text: BODY,
    tag: null,
    documentId: 'one',
    report: () => {},
    pictureOf,
    mark: '',
    say: sayIn(ENGLISH),
  };
  const dashed = rulesIn(cutOutBlock(cut, setting, flow).flatMap((strip) => strip.items)).filter((rule) => rule.dashed);
  const down = dashed.filter((rule) => rule.fromPt[0] === rule.toPt[0]);
  expect(down.map((rule) => rule.toPt[1] - rule.fromPt[1])).toEqual([pointsFromMm(105), pointsFromMm(105)]);
  expect(Math.abs((down[0]?.fromPt[0] ?? 0) - (down[1]?.fromPt[0] ?? 0))).toBeCloseTo(pointsFromMm(148), 9);
});
