import { expect, test } from 'vitest';
import { print } from '../../../worker/core/print/index.ts';
import { nodesOf, structureOf } from './read-back.ts';
import { jobOf, tableOf } from './sample-job.ts';

const treeOf = async (html: string, page = 1) => structureOf((await print(jobOf(html))).bytes, page);

test('print() tags headings, paragraphs and lists as what they are', async () => {
  const tree = await treeOf('<section><h2>Two</h2><p>Text</p><ul><li>Item</li></ul></section>');
  const [article] = nodesOf(tree, 'Art');
  expect(article?.children.map((child) => child.role)).toEqual(['H1', 'Sect']);
  expect(article?.children[1]?.children.map((child) => child.role)).toEqual(['H2', 'P', 'L']);
  expect(nodesOf(tree, 'LI')[0]?.children.map((child) => child.role)).toEqual(['Lbl', 'LBody']);
});

test('print() tags description lists as lists of label and body', async () => {
  const tree = await treeOf(
    '<dl class="facts"><div><dt>Mass</dt><dd>1 kg</dd></div><div><dt>Arm</dt><dd></dd></div></dl>',
  );
  const items = nodesOf(tree, 'LI').map((item) => item.children.map((child) => child.role));
  expect(items).toEqual([
    ['Lbl', 'LBody'],
    ['Lbl', 'LBody'],
  ]);
});

test('print() tags a table with its caption, heads and cells, empty ones too', async () => {
  const tree = await treeOf(
    '<table class="ruled"><caption>Cells</caption><thead><tr><th scope="col">A</th><th scope="col">B</th></tr></thead><tbody><tr><th scope="row">1</th><td></td></tr></tbody></table>',
  );
  const [table] = nodesOf(tree, 'Table');
  expect(table?.children.map((child) => child.role)).toEqual(['Caption', 'THead', 'TBody']);
  expect(nodesOf(tree, 'TR').map((row) => row.children.map((cell) => cell.role))).toEqual([
    ['TH', 'TH'],
    ['TH', 'TD'],
  ]);
});

test('print() writes a table without rows as its caption', async () => {
  const tree = await treeOf(
    '<table class="ruled"><caption>0 looked at</caption><thead><tr><th scope="col">A</th></tr></thead><tbody></tbody></table>',
  );
  expect(nodesOf(tree, 'Table')).toEqual([]);
  expect(nodesOf(tree, 'P')[0]).toMatchObject({ contents: 1 });
});

test('print() keeps a table over three pages one element, its repeated heads artefacts', async () => {
  const { bytes, pages } = await print(jobOf(tableOf(150)));
  expect(pages).toBeGreaterThan(2);
  for (let page = 2; page <= pages; page++) {
    const tree = await structureOf(bytes, page);
    expect(nodesOf(tree, 'THead').flatMap((head) => nodesOf(head, 'TH').filter((cell) => cell.contents > 0))).toEqual(
      [],
    );
    expect(nodesOf(tree, 'TBody')).toHaveLength(1);
  }
});

test('print() gives a figure its text alternative and its caption', async () => {
  const tree = await treeOf(
    '<figure><svg viewBox="0 0 100 40" role="img" aria-label="A line that climbs"><line x1="0" y1="40" x2="100" y2="0" stroke="black"/></svg><figcaption>Climb</figcaption></figure>',
  );
  expect(nodesOf(tree, 'Figure')[0]?.alt).toBe('A line that climbs');
  expect(nodesOf(tree, 'Caption')).toHaveLength(1);
});

test('print() keeps links in their place within a paragraph', async () => {
  const tree = await treeOf('<p>Before <a href="#one">link</a> after</p>');
  const [paragraph] = nodesOf(tree, 'P');
  expect(paragraph).toMatchObject({ contents: 2, children: [{ role: 'Link' }] });
});

test('print() draws without a text alternative never', async () => {
  await expect(print(jobOf('<figure><svg viewBox="0 0 1 1" role="img"></svg></figure>'))).rejects.toThrow('aria-label');
});
