import type { EnvelopeCorner } from '../../calc/loading/envelope.ts';
import { cgMm, type MassMoment } from '../../calc/mass/mass-moment.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { factorOf } from '../../units/quantity.ts';
import { areaDrawing, type Place } from './area-drawing.ts';

/** An envelope with loadings, in calculation units; drawn in the units and the language of the record. */
export interface EnvelopePicture {
  corners: readonly EnvelopeCorner[];
  maximumMassKg: number;
  empty: MassMoment;
  /** Paths from take-off to the end of the fuel; each has its name next to its start. */
  ways: readonly { name: string; path: readonly MassMoment[] }[];
  fmt: Formatter;
  /** Alternative text of the picture. */
  label: string;
}

/** Draws mass over centre of gravity: the envelope, the empty aircraft and every path. */
export function envelopeDrawing({ corners, maximumMassKg, empty, ways, fmt, label }: EnvelopePicture): string {
  const [arm, mass] = [factorOf('arm', fmt.units), factorOf('mass', fmt.units)];
  const placed = (state: MassMoment): Place => ({ across: cgMm(state) / arm, up: state.massKg / mass });
  return areaDrawing({
    corners: corners.map(({ armMm, massKg }) => ({ across: armMm / arm, up: massKg / mass })),
    empty: placed(empty),
    ways: ways.map(({ name, path }) => ({ name, places: path.map(placed) })),
    maximumUp: maximumMassKg / mass,
    names: {
      across: fmt.text(m.envelopeDrawing_centreGravityAftDatum, { arm: fmt.unit('arm') }),
      up: fmt.text(m.envelopeDrawing_mass, { mass: fmt.unit('mass') }),
    },
    fmt,
    label,
  });
}
