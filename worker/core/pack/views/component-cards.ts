import { type Product, productsOf } from '../../calc/lives/product-time.ts';
import type { OpenItem } from '../../calc/open-items/open-item.ts';
import { counterName, meterName } from '../../record/meter-name.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { clockText, itemsDue, leftText, limitText, sinceNewText } from './items-due.ts';
import { capitalised } from './meter-rows.ts';
import { itemName } from './open-items.ts';
import { type Column, sectionOf, tableOf } from './table-section.ts';

/** Returns the products that have a card: their fitting is recorded, or something about them comes due. */
function productsWithCard(context: PackContext): Product[] {
  const due = itemsDue(context);
  return productsOf(context.visit.aircraft).filter(
    (product) => product.fitted !== undefined || due.some((item) => isOf(product, item)),
  );
}

const isOf = ({ kind, serial }: Product, { product }: OpenItem): boolean =>
  product?.kind === kind && product.serial === serial;

export const hasCards = (context: PackContext): boolean => productsWithCard(context).length > 0;

/** Returns one card for each product: identity, fitting, time since new and since overhaul, and its limits. */
export function componentCardsView(context: PackContext): View {
  const { fmt } = context;
  return {
    ...common(context),
    cards: productsWithCard(context).map((product) => card(context, product)),
    ...sources(fmt.text(m.componentCards_timeFittedPlus)),
  };
}

function card(context: PackContext, product: Product): View {
  const { fmt } = context;
  const { kind, name, serial, fitted } = product;
  const heading = fmt.text(m.componentCards_heading, {
    product: capitalised(fmt.term(kind)),
    name,
    serial,
  });
  const tables = [...timeTable(context, product), ...lifeTable(context, product)];
  return sectionOf(heading, tables, fitted ? [] : [fmt.text(m.componentCards_fittingNotRecorded)]);
}

function timeTable(context: PackContext, { kind, serial, fitted }: Product): View[] {
  const { visit, results, fmt } = context;
  const time = results.products.find((each) => each.kind === kind && each.serial === serial);
  if (!time || !fitted) return [];
  const columns: Column[] = [
    ['name', fmt.text(m.componentCards_countedBy)],
    ['num', fmt.text(m.componentCards_readingFitted)],
    ['num', fmt.text(m.componentCards_readingNow)],
    ['num', fmt.text(m.componentCards_sinceNewFitted)],
    ['num', fmt.text(m.componentCards_sinceNewNow)],
    ['num', fmt.text(m.componentCards_sinceOverhaulNow)],
  ];
  const rows = time.clocks.map(({ clock, counter, now, sinceNew, sinceOverhaul }) => {
    const by = clock === 'hours' ? meterName(visit, time, fmt) : counter && counterName(visit, counter, fmt);
    const value = (figure: number | undefined): string => (figure === undefined ? DASH : clockText(clock, figure, fmt));
    return [
      capitalised([fmt.term(clock), by].filter(Boolean).join(', ')),
      ...[fitted.at[clock], now, fitted.sinceNew[clock], sinceNew, sinceOverhaul].map(value),
    ];
  });
  const fittedOn = fmt.date(time.fittedOn);
  return rows.length === 0 ? [] : [tableOf(fmt.text(m.componentCards_time, { fittedOn }), columns, rows)];
}

function lifeTable(context: PackContext, product: Product): View[] {
  const { fmt } = context;
  const due = itemsDue(context).filter((item) => isOf(product, item));
  if (due.length === 0) return [];
  const columns: Column[] = [
    ['name', fmt.text(m.no2)],
    ['text', fmt.text(m.item2)],
    ['text', fmt.text(m.componentCards_limit)],
    ['text', fmt.text(m.dueList_due)],
    ['text', fmt.text(m.dueList_left)],
  ];
  const rows = due.map((item) => [
    itemName(context, item),
    item.text,
    sinceNewText(context, item, item.until).sinceNew ?? DASH,
    limitText(context, item),
    leftText(context, item),
  ]);
  return [tableOf(fmt.text(m.componentCards_lives), columns, rows)];
}
