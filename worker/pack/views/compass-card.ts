import type { SwingResult } from '../../calc/compass/swing.ts';
import { dateOf, printDate, printMoment } from '../../units/calendar.ts';
import { printNumber, printSigned } from '../../units/rounding.ts';
import { deviationChart } from '../chart/deviation-chart.ts';
import type { PackContext } from '../context.ts';
import { DASH, nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';

const STATES = { 'equipment-off': 'Equipment off', 'equipment-on': 'Equipment on' } as const;
const METHODS = {
  'surveyed-base': 'surveyed base',
  'datum-compass': 'datum compass',
  'satellite-track': 'track by satellite',
} as const;
const COEFFICIENTS = ['A', 'B', 'C', 'D', 'E'] as const;
/** A heading on a card has three figures. */
const threeFigures = (deg: number): string => String(Math.round(deg) % 360).padStart(3, '0');

export function compassCardView(context: PackContext): View {
  const { visit, results } = context;
  const { compass } = visit;
  const found = results.compass;
  if (!compass || !found) throw new Error('Cannot fill the compass card: the visit has no swing');
  const { directionIndicator: indicator } = compass;
  return {
    ...common(context),
    serial: compass.serial ?? DASH,
    place: compass.place,
    method: `${METHODS[compass.method]}, headings ${compass.reference}`,
    at: printMoment(compass.swungAt),
    by: nameOf(visit, compass.by),
    conditions: `${compass.engineRunning ? 'engine running' : 'ENGINE OFF'}, ${compass.level ? 'attitude of level flight' : 'NOT LEVEL'}`,
    variation: variationLine(context),
    correctors: compass.correctors ?? DASH,
    indicator: indicator
      ? `${printNumber(indicator.driftDegPer15Min, 1)}° in 15 minutes; limit ${indicator.limitDegPer15Min === undefined ? DASH : `${printNumber(indicator.limitDegPer15Min, 1)}°`}`
      : 'not checked',
    chart: deviationChart(found.swings),
    swings: found.swings.map(swingView),
    hasLoads: found.loads.length > 0,
    loads: found.loads.map(({ name, shiftDeg }) => ({ name, shift: printSigned(shiftDeg, 1) })),
    card: cardView(context, found.swings),
    signatures: [signatureOf(visit, compass.by, 'Swung by', printDate(dateOf(compass.swungAt)))],
    ...sources(
      'Deviation = magnetic heading − compass reading, east positive. A to E by least squares over all headings (model: Pub. 226, Handbook of Magnetic Compass Adjustment). Steer = heading − deviation.',
      'True for the state shown: keep telephones, magnets and new leads away from the compass. Limit 10° (14 CFR 27.1327, former 23.1327).',
    ),
  };
}

function variationLine({ results }: PackContext): string {
  const variation = results.compass?.variation;
  if (!variation) return 'not needed: headings were magnetic';
  return `${printSigned(variation.variationDeg, 1)}° (east positive), ${variation.model}, made for ${printDate(variation.validFrom)} to ${printDate(variation.validUntil)}`;
}

function swingView({
  state,
  readings,
  coefficients,
  correction,
  greatestDeviationDeg,
  greatestResidualDeg,
}: SwingResult): View {
  return {
    state: STATES[state],
    readings: readings.map(({ headingDeg, compassDeg, deviationDeg, residualDeg }) => ({
      heading: threeFigures(headingDeg),
      compass: printNumber(compassDeg, 1),
      deviation: printSigned(deviationDeg, 1),
      residual: residualDeg === undefined ? DASH : printSigned(residualDeg, 2),
    })),
    coefficients: coefficients
      ? COEFFICIENTS.map((name) => `${name} ${printSigned(coefficients[name], 2)}°`).join(', ')
      : 'too few headings',
    advice: correction
      ? `Correctors, should it be adjusted again: on south set ${threeFigures(correction.setSouthDeg)}, on west set ${threeFigures(correction.setWestDeg)}.`
      : 'No advice for the correctors: a cardinal heading is missing.',
    greatest: printNumber(greatestDeviationDeg, 1),
    residual: printNumber(greatestResidualDeg, 2),
  };
}

/** The card to cut out, in two halves, with a column for each electrical state. */
function cardView({ visit, identity }: PackContext, swings: readonly SwingResult[]): View {
  const withCard = swings.filter(({ card }) => card.length > 0);
  const rows = (withCard[0]?.card ?? []).map(({ forDeg }, index) => ({
    for: threeFigures(forDeg),
    steer: withCard.map(({ card }) => threeFigures(card[index]?.steerDeg ?? forDeg)),
  }));
  const half = Math.ceil(rows.length / 2);
  return {
    registration: visit.aircraft.registration,
    serial: visit.compass?.serial ?? DASH,
    date: printDate(dateOf(visit.compass?.swungAt ?? identity.issuedAt)),
    by: nameOf(visit, visit.compass?.by),
    heads: withCard.map(({ state }) => (state === 'equipment-on' ? 'Steer, on' : 'Steer, off')),
    halves: [{ rows: rows.slice(0, half) }, { rows: rows.slice(half) }],
  };
}
