import { envelopeCorners } from '../../calc/loading/aircraft-envelope.ts';
import type { LoadingSheet } from '../../calc/loading/loading-sheet.ts';
import { cgMm, type MassMoment } from '../../calc/mass/mass-moment.ts';
import { MAX } from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { loadingName } from '../loading-name.ts';
import { envelopeDrawing } from './envelope-drawing.ts';

/** Draws the envelope with the empty aircraft, both extremes and every fuel-burn path; empty if no envelope is specified. */
export function envelopeChart(context: PackContext, sheet: LoadingSheet): string {
  const { maximumMassKg } = context.visit.aircraft;
  const corners = envelopeCorners(context.visit.aircraft);
  const { schedule: empty } = context.results;
  if (!corners || !empty) return '';
  const ways = sheet.loadings.map(({ path }, index) => ({ name: String(index + 1), path }));
  const label = describe(context, sheet);
  return envelopeDrawing({ corners, maximumMassKg, empty, ways, fmt: context.fmt, label });
}

function describe({ fmt, results, visit }: PackContext, sheet: LoadingSheet): string {
  const { schedule } = results;
  const where = (state: MassMoment): string =>
    fmt.text(m.envelopeChart_at, { mass: fmt.measure('mass', state.massKg), cg: fmt.measure('arm', cgMm(state)) });
  const paths = sheet.loadings.map(({ kind, path }) =>
    fmt.text(m.envelopeChart_fromTo, {
      kind: fmt.value(loadingName(kind)),
      where: path[0] ? where(path[0]) : '–',
      where2: path.at(-1) ? where(path.at(-1) as MassMoment) : '–',
    }),
  );
  return fmt.text(m.envelopeChart_massAgainstCentreGravity, {
    maximumMass: fmt.measure('mass', visit.aircraft.maximumMassKg, MAX),
    where: schedule ? where(schedule) : '–',
    paths: paths.join('. '),
  });
}
