import { rangeText } from '../../gate/range-text.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { DocumentInstance } from '../document.ts';
import { flightResult } from '../flight-text.ts';
import { itemLabel } from '../item-label.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { limitedRows } from './figure-rows.ts';
import { type Column, sectionOf, tableOf } from './table-section.ts';

/** Returns the flights before the release, and the measured figures that have no other document; none without any. */
export function flightsAndMeasurements(context: PackContext): DocumentInstance[] {
  const { fmt } = context;
  const sections = [
    ...flightSection(context),
    ...torqueSection(context),
    ...magnetometerSection(context),
    ...balanceSection(context),
  ];
  if (sections.length === 0) return [];
  return [
    {
      id: 'flights-and-measurements',
      title: fmt.text(m.flightsAndMeasurements),
      view: { ...common(context), sections, ...sources(fmt.text(m.flightsAndMeasurements_limitsOfRecord)) },
    },
  ];
}

function flightSection({ visit, fmt }: PackContext): View[] {
  const { flights = [], meters } = visit;
  if (flights.length === 0) return [];
  const columns: Column[] = [
    ['name', fmt.text(m.flights_flight)],
    ['text', fmt.text(m.takeOff)],
    ['text', fmt.text(m.loadingSheet_pilot)],
    ['text', fmt.text(m.flights_purpose)],
    ['num', fmt.text(m.electricalLoadAnalysis_minutes)],
    ['num', fmt.text(m.flights_landings)],
    ['text', fmt.text(m.flights_for)],
    ['text', fmt.text(m.result)],
  ];
  const rows = flights.map((flight) => [
    flight.id,
    fmt.timestamp(flight.from),
    nameOf(visit, flight.by),
    fmt.term(flight.purpose),
    fmt.plain(flight.minutes, 0),
    fmt.plain(flight.landings, 0),
    [...(flight.for ?? []), ...(flight.openItems ?? [])].join(', ') || DASH,
    flightResult(flight, fmt),
  ]);
  const { landings, landingsIn } = meters ?? {};
  const counted =
    landings === undefined || landingsIn === undefined
      ? []
      : [
          fmt.text(m.flights_landingsCounted, {
            before: fmt.plain(landingsIn, 0),
            after: fmt.plain(landings, 0),
          }),
        ];
  const reports = flights.map(({ id, report }) => `${id}: ${report}`);
  return [
    sectionOf(
      fmt.text(m.flights_beforeRelease),
      [tableOf(fmt.text(m.flights_caption), columns, rows)],
      [...reports, ...counted],
    ),
  ];
}

function torqueSection({ visit, results, fmt }: PackContext): View[] {
  const torques = visit.measurements?.torques ?? [];
  const figures = results.measurements?.torques ?? [];
  if (torques.length === 0) return [];
  const columns: Column[] = [
    ['name', fmt.text(m.torques_fastener)],
    ['text', fmt.text(m.flights_for)],
    ['num', fmt.text(m.value)],
    ['text', fmt.text(m.limits)],
    ['text', fmt.text(m.unit)],
    ['text', fmt.text(m.verdict)],
    ['text', fmt.text(m.torques_wrench)],
    ['text', fmt.text(m.by2)],
  ];
  const rows = limitedRows(fmt, figures, 0).map(({ value = '', limits = '', unit = '', verdict = '' }, index) => {
    const { fastener = '', for: work = '', wrench = '', by, at = '' } = torques[index] ?? {};
    return [fastener, work, value, limits, unit, verdict, wrench, `${nameOf(visit, by)}, ${fmt.timestamp(at)}`];
  });
  return [sectionOf(fmt.text(m.torques), [tableOf(fmt.text(m.torques_caption), columns, rows)])];
}

function magnetometerSection(context: PackContext): View[] {
  const { visit, results, fmt } = context;
  const checks = visit.measurements?.magnetometers ?? [];
  if (checks.length === 0) return [];
  const columns: Column[] = [
    ['num', fmt.text(m.compassCard_heading)],
    ['num', fmt.text(m.magnetometers_reading)],
    ['num', fmt.text(m.magnetometers_error)],
    ['text', fmt.text(m.limits)],
    ['text', fmt.text(m.verdict)],
  ];
  const tables = checks.map((check, index) => {
    const figures = results.measurements?.magnetometers[index]?.figures ?? [];
    const rows = limitedRows(fmt, figures, 1).map(({ value = '', verdict = '' }, row) => {
      const { headingDeg = 0, compassDeg = 0 } = check.readings[row] ?? {};
      const limits = fmt.value(rangeText(figures[row] ?? {}));
      return [fmt.plain(headingDeg, 0), fmt.plain(compassDeg, 1), value, limits, verdict];
    });
    const which = [check.name, itemLabel(context, check.item)].filter(Boolean).join(', ');
    const caption = fmt.text(m.magnetometers_caption, {
      which: which && `${which}, `,
      by: fmt.text(m.by, { at: fmt.timestamp(check.at), visit: nameOf(visit, check.by) }),
    });
    return tableOf(caption, columns, rows);
  });
  return [sectionOf(fmt.text(m.magnetometers), tables)];
}

const RUNS = { before: m.balances_before, after: m.balances_after } as const;

function balanceSection({ visit, results, fmt }: PackContext): View[] {
  const balances = visit.measurements?.balances ?? [];
  if (balances.length === 0) return [];
  const columns: Column[] = [
    ['name', fmt.text(m.radioAndSurveillanceRecord_figure)],
    ['num', fmt.text(m.value)],
    ['text', fmt.text(m.limits)],
    ['text', fmt.text(m.unit)],
    ['text', fmt.text(m.verdict)],
  ];
  const tables = balances.map(({ of, when, rpm, at, by, weights, readings }, index) => {
    const figures = results.measurements?.balances[index]?.figures ?? [];
    const rows = figures.flatMap((figure, row) =>
      limitedRows(fmt, [figure], figure.figure === 'vibration' ? 2 : 0).map(
        ({ name = '', value = '', limits = '', unit = '', verdict = '' }) => {
          const place = readings[row]?.place;
          return [place === undefined ? name : `${name}, ${place}`, value, limits, unit, verdict];
        },
      ),
    );
    const caption = fmt.text(m.balances_caption, {
      of: fmt.term(of),
      run: fmt.text(RUNS[when]),
      rpm: fmt.plain(rpm, 0),
      by: fmt.text(m.by, { at: fmt.timestamp(at), visit: nameOf(visit, by) }),
      weights: weights ?? fmt.text(m.none),
    });
    return tableOf(`${caption[0]?.toUpperCase()}${caption.slice(1)}`, columns, rows);
  });
  return [sectionOf(fmt.text(m.balances), tables)];
}
