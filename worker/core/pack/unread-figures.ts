import { MASS_CAPS, massCapOf } from '../gate/mass-cap.ts';
import type { Regime, RegimeValue } from '../gate/regimes/regime.ts';
import { mayBlock } from '../gate/source.ts';
import * as m from '../text/generated/messages.ts';
import { list, type Message, type Said, said } from '../text/message.ts';
import type { PackContext } from './context.ts';
import { isRegimeValue, REGIME_VALUE_NAMES } from './regime-value-names.ts';

/** A figure of the code whose source was not read: no rule blocks by it. */
export interface UnreadFigure {
  name: Message;
  source: string;
  /** Why it was not read, for the documentation. */
  why: string;
  /** Whether a pack prints something that follows from it. */
  isUsed(context: PackContext): boolean;
}

/** Figures to be confirmed that are not values of a regime. */
export const UNREAD_FIGURES: readonly UnreadFigure[] = [
  {
    name: m.unreadFigure_dropIntermittent,
    source: 'AC 43.13-1B table 11-6',
    why: 'The page of the table was not found. Limits of continuous loads were read in tables 11-7 and 11-8.',
    isUsed: ({ results }) => (results.electrical?.circuits ?? []).some(({ peakDrop }) => peakDrop !== undefined),
  },
  {
    name: m.unreadFigure_conductorTemperature,
    source: 'AC 43.13-1B 11-66d(6)',
    why: 'The symbols were read; the equation is a picture. It reproduces the worked example.',
    isUsed: ({ results }) =>
      (results.electrical?.circuits ?? []).some(({ continuousDrop }) => continuousDrop !== undefined),
  },
  {
    name: m.unreadFigure_batteryReserve,
    source: '14 CFR 23.1353(h) before 2017',
    why: 'The copy breaks off before the minutes. A reserve in the record takes its place.',
    isUsed: ({ visit }) => visit.electrical?.battery !== undefined && visit.electrical.battery.reserveMin === undefined,
  },
  {
    name: m.unreadFigure_controlClearance,
    source: 'AC 43.13-1B 11-125',
    why: 'The copy breaks off before the distance; the rest of the paragraph was read.',
    isUsed: ({ visit }) => (visit.wiring?.nearControls ?? []).length > 0,
  },
  {
    name: m.unreadFigure_antennaDrag,
    source: 'AC 43.13-2B ch. 3',
    why: 'The chapter was not found in any copy.',
    isUsed: ({ results }) => (results.antennas?.antennas ?? []).some(({ dragN }) => dragN !== undefined),
  },
  {
    name: m.unreadFigure_groundPlane,
    source: 'AC 43.13-2B',
    why: 'Read only as a manufacturer of locator transmitters quotes it.',
    isUsed: ({ visit }) => (visit.antennas?.items ?? []).some(({ needsGroundPlane }) => needsGroundPlane),
  },
  {
    name: m.unreadFigure_stateBlock,
    source: 'ICAO Annex 10, Vol. III, ch. 9',
    why: 'The table of the Annex was not found. Blocks are those of open data files that agree.',
    isUsed: ({ results }) => results.surveillance?.forms?.state !== undefined,
  },
];

/** Values of a regime whose source was not read. */
export function unreadValues(regime: Regime): RegimeValue[] {
  return Object.keys(regime)
    .filter(isRegimeValue)
    .filter((name) => regime[name].value !== null && !mayBlock(regime[name].source));
}

/** Names the figures that a pack uses and whose source was not read, each with its source; none if all were. */
export function toConfirm(context: PackContext): Said | undefined {
  const { regime, visit } = context;
  const cap: RegimeValue = massCapOf(visit.aircraft, regime);
  const isOther = (name: RegimeValue): boolean => name !== cap && MASS_CAPS.some((each) => each === name);
  const own = unreadValues(regime)
    .filter((name) => !isOther(name))
    .map((name) => ({ name: REGIME_VALUE_NAMES[name], source: regime[name].source.text }));
  const figures = [...own, ...UNREAD_FIGURES.filter(({ isUsed }) => isUsed(context))].map(({ name, source }) =>
    said(m.unreadFigure_withSource, { name: said(name), source }),
  );
  return figures.length === 0 ? undefined : said(m.unreadFigure_toConfirm, { figures: list(figures, '; ') });
}
