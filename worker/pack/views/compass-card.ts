import type { SwingResult } from '../../calc/compass/swing.ts';
import { DASH } from '../../text/dash.ts';
import { phrase } from '../../words/words.ts';
import { deviationChart } from '../chart/deviation-chart.ts';
import type { PackContext } from '../context.ts';
import { nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';

const STATES = { 'equipment-off': phrase`Equipment off`, 'equipment-on': phrase`Equipment on` } as const;
const METHODS = {
  'surveyed-base': phrase`surveyed base`,
  'datum-compass': phrase`datum compass`,
  'satellite-track': phrase`track by satellite`,
} as const;
const COEFFICIENTS = ['A', 'B', 'C', 'D', 'E'] as const;
/** A heading on a card has three figures. */
const threeFigures = (deg: number): string => String(Math.round(deg) % 360).padStart(3, '0');

export function compassCardView(context: PackContext): View {
  const { visit, results, say } = context;
  const { compass } = visit;
  const found = results.compass;
  if (!compass || !found) throw new Error('Cannot fill the compass card: the visit has no swing');
  const { directionIndicator: indicator } = compass;
  return {
    ...common(context),
    serial: compass.serial ?? DASH,
    place: compass.place,
    method: say.words`${say.term(METHODS[compass.method])}, headings ${say.term(compass.reference)}`,
    at: say.moment(compass.swungAt),
    by: nameOf(visit, compass.by),
    conditions: `${compass.engineRunning ? say.words`engine running` : say.words`ENGINE OFF`}, ${compass.level ? say.words`attitude of level flight` : say.words`NOT LEVEL`}`,
    variation: variationLine(context),
    correctors: compass.correctors ?? DASH,
    indicator: indicator
      ? say.words`${say.plain(indicator.driftDegPer15Min, 1)}° in 15 minutes; limit ${indicator.limitDegPer15Min === undefined ? DASH : `${say.plain(indicator.limitDegPer15Min, 1)}°`}`
      : say.words`not checked`,
    chart: deviationChart(found.swings, context.say),
    swings: found.swings.map((swing) => swingView(context, swing)),
    hasLoads: found.loads.length > 0,
    loads: found.loads.map(({ name, shiftDeg }) => ({ name, shift: say.signed(shiftDeg, 1) })),
    hasCard: found.swings.some(({ card }) => card.length > 0),
    card: cardView(context, found.swings),
    signatures: [signatureOf(visit, compass.by, say.words`Swung by`, say.day(compass.swungAt))],
    ...sources(
      say.words`Deviation = magnetic heading − compass reading, east positive. A to E by least squares over all headings (model: Pub. 226, Handbook of Magnetic Compass Adjustment). Steer = heading − deviation.`,
      say.words`True for the state shown: keep telephones, magnets and new leads away from the compass. Limit 10° (14 CFR 27.1327, former 23.1327).`,
    ),
  };
}

function variationLine({ results, say }: PackContext): string {
  const variation = results.compass?.variation;
  if (!variation) return say.words`not needed: headings were magnetic`;
  return say.words`${say.signed(variation.variationDeg, 1)}° (east positive), ${variation.model}, made for ${say.date(variation.validFrom)} to ${say.date(variation.validUntil)}`;
}

function swingView(
  { say }: PackContext,
  { state, readings, coefficients, correction, greatestDeviationDeg, greatestResidualDeg }: SwingResult,
): View {
  return {
    state: say.term(STATES[state]),
    readings: readings.map(({ headingDeg, compassDeg, deviationDeg, residualDeg }) => ({
      heading: threeFigures(headingDeg),
      compass: say.plain(compassDeg, 1),
      deviation: say.signed(deviationDeg, 1),
      residual: residualDeg === undefined ? DASH : say.signed(residualDeg, 2),
    })),
    coefficients: coefficients
      ? COEFFICIENTS.map((name) => `${name} ${say.signed(coefficients[name], 2)}°`).join(', ')
      : say.words`too few headings, or not all round`,
    advice: correction
      ? say.words`Correctors, should it be adjusted again: on south set ${threeFigures(correction.setSouthDeg)}, on west set ${threeFigures(correction.setWestDeg)}.`
      : say.words`No advice for the correctors: a cardinal heading is missing.`,
    greatest: say.plain(greatestDeviationDeg, 1),
    residual: say.plain(greatestResidualDeg, 2),
  };
}

/** The card to cut out, in two halves, with a column for each electrical state. */
function cardView({ visit, issuedAt, say }: PackContext, swings: readonly SwingResult[]): View {
  const withCard = swings.filter(({ card }) => card.length > 0);
  const rows = (withCard[0]?.card ?? []).map(({ forDeg }, index) => ({
    for: threeFigures(forDeg),
    steer: withCard.map(({ card }) => threeFigures(card[index]?.steerDeg ?? forDeg)),
  }));
  const half = Math.ceil(rows.length / 2);
  return {
    registration: visit.aircraft.registration,
    serial: visit.compass?.serial ?? DASH,
    date: say.day(visit.compass?.swungAt ?? issuedAt),
    by: nameOf(visit, visit.compass?.by),
    heads: withCard.map(({ state }) => (state === 'equipment-on' ? say.words`Steer, on` : say.words`Steer, off`)),
    halves: [{ rows: rows.slice(0, half) }, { rows: rows.slice(half) }],
  };
}
