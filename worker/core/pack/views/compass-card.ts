import type { SwingResult } from '../../calc/compass/swing.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import { deviationChart } from '../chart/deviation-chart.ts';
import type { PackContext } from '../context.ts';
import { nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { common, sources } from './common.ts';

const STATES = { 'equipment-off': m.equipmentOff, 'equipment-on': m.equipment } as const;
const METHODS = {
  'surveyed-base': m.compassCard_surveyedBase,
  'datum-compass': m.compassCard_datumCompass,
  'satellite-track': m.compassCard_trackSatellite,
} as const;
const COEFFICIENTS = ['A', 'B', 'C', 'D', 'E'] as const;
/** A heading on a card has three figures. */
const threeFigures = (deg: number): string => String(Math.round(deg) % 360).padStart(3, '0');

export function compassCardView(context: PackContext): View {
  const { visit, results, fmt } = context;
  const { compass } = visit;
  const found = results.compass;
  if (!compass || !found) throw new Error('Cannot fill the compass card: the visit has no swing');
  const { directionIndicator: indicator } = compass;
  return {
    ...common(context),
    ...accepted(context, '/compass'),
    serial: compass.serial ?? DASH,
    place: compass.place,
    method: fmt.text(m.compassCard_headings, {
      methods: fmt.text(METHODS[compass.method]),
      reference: fmt.term(compass.reference),
    }),
    at: fmt.timestamp(compass.swungAt),
    by: nameOf(visit, compass.by),
    conditions: `${compass.engineRunning ? fmt.text(m.compassCard_engineRunning) : fmt.text(m.compassCard_engineOff)}, ${compass.level ? fmt.text(m.compassCard_attitudeLevelFlight) : fmt.text(m.compassCard_notLevel)}`,
    variation: variationLine(context),
    correctors: compass.correctors ?? DASH,
    indicator: indicator
      ? fmt.text(m.compassCard_15MinutesLimit, {
          driftDegPer15Min: fmt.plain(indicator.driftDegPer15Min, 1),
          dash: indicator.limitDegPer15Min === undefined ? DASH : `${fmt.plain(indicator.limitDegPer15Min, 1)}°`,
        })
      : fmt.text(m.compassCard_notChecked),
    chart: deviationChart(found.swings, context.fmt),
    swings: found.swings.map((swing) => swingView(context, swing)),
    hasLoads: found.loads.length > 0,
    loads: found.loads.map(({ name, shiftDeg }) => ({ name, shift: fmt.signed(shiftDeg, 1) })),
    hasCard: found.swings.some(({ card }) => card.length > 0),
    card: cardView(context, found.swings),
    signatures: [signatureOf({ visit, fmt }, compass.by, fmt.text(m.compassCard_swung), fmt.day(compass.swungAt))],
    ...sources(fmt.text(m.compassCard_deviationMagneticHeadingCompass), fmt.text(m.compassCard_trueStateShownKeep)),
  };
}

function variationLine({ results, fmt }: PackContext): string {
  const variation = results.compass?.variation;
  if (!variation) return fmt.text(m.compassCard_notNeededHeadingsMagnetic);
  return fmt.text(m.compassCard_eastPositiveMade, {
    variation: fmt.signed(variation.variationDeg, 1),
    model: variation.model,
    validFrom: fmt.date(variation.validFrom),
    validUntil: fmt.date(variation.validUntil),
  });
}

function swingView(
  { fmt }: PackContext,
  { state, readings, coefficients, correction, greatestDeviationDeg, greatestResidualDeg }: SwingResult,
): View {
  return {
    state: fmt.text(STATES[state]),
    readings: readings.map(({ headingDeg, compassDeg, deviationDeg, residualDeg }) => ({
      heading: threeFigures(headingDeg),
      compass: fmt.plain(compassDeg, 1),
      deviation: fmt.signed(deviationDeg, 1),
      residual: residualDeg === undefined ? DASH : fmt.signed(residualDeg, 2),
    })),
    coefficients: coefficients
      ? COEFFICIENTS.map((name) => `${name} ${fmt.signed(coefficients[name], 2)}°`).join(', ')
      : fmt.text(m.compassCard_tooFewHeadingsNot),
    advice: correction
      ? fmt.text(m.compassCard_correctorsShouldAdjustedAgain, {
          threeFigures: threeFigures(correction.setSouthDeg),
          threeFigures2: threeFigures(correction.setWestDeg),
        })
      : fmt.text(m.compassCard_noAdviceCorrectorsCardinal),
    greatest: fmt.plain(greatestDeviationDeg, 1),
    residual: fmt.plain(greatestResidualDeg, 2),
  };
}

/** Returns the card to cut out, in two halves, with a column for each electrical state. */
function cardView({ visit, issuedAt, fmt }: PackContext, swings: readonly SwingResult[]): View {
  const withCard = swings.filter(({ card }) => card.length > 0);
  const rows = (withCard[0]?.card ?? []).map(({ forDeg }, index) => ({
    for: threeFigures(forDeg),
    steer: withCard.map(({ card }) => threeFigures(card[index]?.steerDeg ?? forDeg)),
  }));
  const half = Math.ceil(rows.length / 2);
  return {
    registration: visit.aircraft.registration,
    serial: visit.compass?.serial ?? DASH,
    date: fmt.day(visit.compass?.swungAt ?? issuedAt),
    by: nameOf(visit, visit.compass?.by),
    heads: withCard.map(({ state }) =>
      state === 'equipment-on' ? fmt.text(m.compassCard_steer) : fmt.text(m.compassCard_steerOff),
    ),
    halves: [{ rows: rows.slice(0, half) }, { rows: rows.slice(half) }],
  };
}
