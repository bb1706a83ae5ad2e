import * as z from 'zod';

const number = z.number();
const maybe = number.optional();
const text = z.string();

const Loading = z.object({
  massKg: number,
  momentKgMm: number,
  load: z.record(text, number).meta({ description: 'kg by station' }),
});
const Extreme = z.object({ loading: Loading, armMm: number });
const Margin = z.object({ side: text, margin: number, limit: number, loading: Loading });
const Refused = z.object({
  state: text,
  worst: Margin.optional(),
  overKg: maybe,
  underKg: maybe,
  leastKg: maybe,
  station: text.optional(),
  limit: text.optional(),
});

const Allowance = z.object({ kg: number, governedBy: text.meta({ description: 'The limit that is met first' }) });

/** What may be loaded, as an assessment answers it. */
export const LoadingSheet = z.object({
  extremes: z.object({ forward: Extreme, aft: Extreme, margins: z.array(Margin) }).optional(),
  minimumSoloKg: maybe,
  leastPilot: z.object({ station: text, kg: maybe, governedBy: text }).optional(),
  fullFuelKg: number,
  payloadFullFuelKg: number,
  limits: z.object({
    usefulLoad: Allowance,
    fullTanksPayload: Allowance,
    fullFuelKg: number,
    leastBurnKg: number.meta({ description: 'Fuel to be burnt before landing with that payload and full tanks' }),
    afterBurn: z.object({ payloadKg: number, burnKg: number, leftKg: number }).optional().meta({
      description:
        'Payload with full tanks that is too heavy to land at once, fuel to be burnt with it, and what is left',
    }),
  }),
  table: z.object({
    usableL: z.array(number),
    seats: z
      .array(z.object({ aboard: z.enum(['solo', 'two', 'all']), stations: z.array(text) }))
      .meta({ description: 'Stations that each crew of the rows sits on; every other seat is empty' }),
    rows: z.array(
      z.object({
        aboard: z.enum(['solo', 'two', 'all']),
        eachKg: number,
        cells: z.array(z.union([z.object({ baggageKg: number }), z.object({ refused: Refused })])),
      }),
    ),
  }),
});
