import * as m from '../../text/generated/messages.ts';
import { paginate } from '../paginate/paginate.ts';
import { pointsFromMm } from '../paper.ts';
import { childElements, type Markup, textOf } from '../parse/markup.ts';
import { BLOCK_GAP_PT, BLOCK_STYLES, RULE_PT } from '../style/block-style.ts';
import { textStyle } from '../style/text-style.ts';
import { outline } from './aside.ts';
import type { Item, Point } from './item.ts';
import type { BlockRule, Flow, LayoutContext } from './layout-context.ts';
import { heightOf, stack } from './stack.ts';
import { type Strip, spaced, strip } from './strip.ts';
import { childTag } from './tag.ts';
import { styledText } from './text-block.ts';

// A cut-out grows with its content: a card that leaves out a limit is worse than a large one. The mark of a draft is
// set here, so that no template can forget it.

/** Slips are set small to fit a book; a card for the cockpit has no letter below 9 points, except labels at 8. */
const SCALES = { small: 0.86, legible: 9 / 8 } as const;
const PADDING_PT = pointsFromMm(5);
const MARK_PT = pointsFromMm(4);
const MARK_GAP_PT = pointsFromMm(1);
/** Space above a card for the title of its document. */
const TITLE_ROOM_PT = 40;
const NUMBER_GAP_PT = 8;
const HEADINGS = new Set(['h2', 'h3']);

// Returns two short rules outside each corner, in line with the edges, as guides for a blade.
function cornerMarks(widthPt: number, heightPt: number): Item[] {
  const corners: readonly (readonly [x: number, y: number, outX: number, outY: number])[] = [
    [0, 0, -1, -1],
    [widthPt, 0, 1, -1],
    [widthPt, heightPt, 1, 1],
    [0, heightPt, -1, 1],
  ];
  const rule = (fromPt: Point, toPt: Point): Item => ({ kind: 'rule', fromPt, toPt, weightPt: RULE_PT.medium });
  return corners.flatMap(([x, y, outX, outY]) => [
    rule([x + outX * MARK_GAP_PT, y], [x + outX * MARK_PT, y]),
    rule([x, y + outY * MARK_GAP_PT], [x, y + outY * MARK_PT]),
  ]);
}

function lengthPt(value: string | undefined): number {
  const lengthMm = Number(value);
  if (!(lengthMm > 0))
    throw new Error(
      `Cannot typeset cut-out: data-width-mm and data-height-mm must be positive: current value is ${value}`,
    );
  return pointsFromMm(lengthMm);
}

/** Layout of a cut-out: its width, and the height that a page leaves it. */
interface Card {
  widthPt: number;
  minPt: number;
  /** Max. height of one card inside its edges. */
  maxPt: number;
  /** Context inside a card; of several cards each has less space, for the lines repeated on all of them. */
  inside: LayoutContext;
  /** Heading of a further card, and the line with its number. */
  head: readonly Strip[];
}

/** Returns the number of a card and the notice that no card is complete: a limit may be on another. Empty for a single card. */
function numbered(index: number, count: number, inside: LayoutContext, flow: Flow): Strip[] {
  if (count === 1) return [];
  const text = inside.say(m.cutOut_cardCompleteOnlyAll, { index: index + 1, count, count2: count });
  return spaced(flow([{ name: 'p', attributes: {}, classes: new Set(), children: [text] }], inside), NUMBER_GAP_PT, 0);
}

/** Adds the mark of an unreleased pack inside the cut line, on every card. */
function marked({ mark }: LayoutContext, inside: LayoutContext, flow: Flow): Strip[] {
  if (mark === '') return [];
  const text: Markup = { name: 'strong', attributes: {}, classes: new Set(), children: [mark] };
  return flow([{ name: 'p', attributes: {}, classes: new Set(), children: [text] }], inside);
}

function cardFor(block: Markup, setting: LayoutContext, flow: Flow): Card {
  const widthPt = lengthPt(block.attributes['data-width-mm']);
  const scale = block.classes.has('legible') ? SCALES.legible : SCALES.small;
  const text = textStyle('regular', 9.5, 12.5, scale);
  const tag = childTag(setting.tag, 'Div');
  const inside = { ...setting, columnPt: widthPt - 2 * PADDING_PT, scale, text, tag };
  const [heading] = childElements(block);
  // On further cards the heading is an artefact: it is a repetition.
  const silent = { ...inside, tag: null, report: () => {} };
  const head = heading && HEADINGS.has(heading.name) ? styledText(heading, BLOCK_STYLES.h3, 'H3', silent) : [];
  const aboutPt = heightOf([...marked(setting, silent, flow), ...head, ...numbered(0, 2, silent, flow)]);
  const maxPt = setting.bodyPt - TITLE_ROOM_PT - 2 * MARK_PT - 2 * PADDING_PT;
  const bodyPt = maxPt - aboutPt - BLOCK_GAP_PT * scale;
  return {
    widthPt,
    minPt: lengthPt(block.attributes['data-height-mm']),
    maxPt,
    inside: { ...inside, bodyPt },
    head,
  };
}

/**
 * `<div class="cut">`: a piece to cut out of the page, of true width and with a given min. height. It grows with its
 * content; content longer than a page continues on a second card.
 */
export const cutOutBlock: BlockRule = (block, setting, flow) => {
  const { widthPt, minPt, maxPt, inside, head } = cardFor(block, setting, flow);
  const context = textOf(block).slice(0, 60);
  const report = (): void => setting.report({ code: 'CONTENT_DOES_NOT_FIT', documentId: setting.documentId, context });
  if (widthPt > setting.columnPt + 0.01) report();
  const content = flow(block.children, inside);
  const isOne = heightOf([...marked(setting, inside, flow), ...content]) <= maxPt;
  const cards = isOne ? [{ strips: content, overflows: null }] : paginate(content, inside.bodyPt);
  if (cards.some(({ overflows }) => overflows !== null)) report();
  return cards.map(({ strips }, index) => {
    const further = index === 0 ? [] : head;
    const number = numbered(index, cards.length, inside, flow);
    const { heightPt, items } = stack([...marked(setting, inside, flow), ...further, ...strips, ...number]);
    return cutStrip(widthPt, Math.max(minPt, heightPt + 2 * PADDING_PT), items, setting);
  });
};

function cutStrip(widthPt: number, heightPt: number, items: readonly Item[], { columnPt }: LayoutContext): Strip {
  const content: Item = { kind: 'group', xPt: PADDING_PT, yPt: PADDING_PT, items };
  const marks = [...outline(widthPt, heightPt, RULE_PT.hair, true), ...cornerMarks(widthPt, heightPt)];
  const xPt = Math.max(0, Math.min(MARK_PT, columnPt - widthPt));
  const gapPt = 6.5;
  return strip({
    heightPt: heightPt + 2 * MARK_PT,
    abovePt: gapPt,
    belowPt: gapPt,
    items: [{ kind: 'group', xPt, yPt: MARK_PT, items: [...marks, content] }],
  });
}
