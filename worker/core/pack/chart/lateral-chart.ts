import { cgMm } from '../../calc/mass/mass-moment.ts';
import * as m from '../../text/generated/messages.ts';
import { factorOf } from '../../units/quantity.ts';
import type { PackContext } from '../context.ts';
import { areaDrawing, type Place } from './area-drawing.ts';

/** Draws the lateral limits over mass or over the longitudinal arm, with the empty aircraft and every named loading; empty without limits. */
export function lateralChart({ visit, results, fmt }: PackContext): string {
  const limits = visit.aircraft.lateralEnvelope;
  const { lateral, loading, schedule } = results;
  if (!limits || !lateral || !loading || !schedule) return '';
  const [arm, mass] = [factorOf('arm', fmt.units), factorOf('mass', fmt.units)];
  const placed = (lateralMm: number, { massKg, armMm }: { massKg: number; armMm: number }): Place => ({
    across: lateralMm / arm,
    up: limits.by === 'mass' ? massKg / mass : armMm / arm,
  });
  const corners =
    limits.by === 'mass'
      ? limits.corners.map(({ lateralArmMm, massKg }) => placed(lateralArmMm, { massKg, armMm: 0 }))
      : limits.corners.map(({ lateralArmMm, armMm }) => placed(lateralArmMm, { massKg: 0, armMm }));
  const ways = loading.loadings.flatMap(({ path }, index) => {
    const [start, end, point] = [path[0], path.at(-1), lateral.loadings[index]];
    if (!start || !end || !point) return [];
    const at = (of: typeof start): { massKg: number; armMm: number } => ({ massKg: of.massKg, armMm: cgMm(of) });
    return [{ name: String(index + 1), places: [placed(point.takeOffMm, at(start)), placed(point.noFuelMm, at(end))] }];
  });
  const [armUnit, massUnit] = [fmt.unit('arm'), fmt.unit('mass')];
  return areaDrawing({
    corners,
    empty: placed(lateral.empty.armMm, schedule),
    ways,
    names: {
      across: fmt.text(m.lateralChart_lateral, { arm: armUnit }),
      up:
        limits.by === 'mass'
          ? fmt.text(m.envelopeDrawing_mass, { mass: massUnit })
          : fmt.text(m.lateralChart_arm, { arm: armUnit }),
    },
    fmt,
    label: fmt.text(m.lateralChart_label, {
      empty: fmt.measure('arm', lateral.empty.armMm, { signed: true, extra: 1 }),
      loadings: ways.map(({ name }) => name).join(', '),
    }),
  });
}
