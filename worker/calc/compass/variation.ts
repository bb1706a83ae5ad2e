import geomagnetism from 'geomagnetism';
import { dateOf } from '../../units/calendar.ts';

/** Magnetic variation at a place and time. */
export interface Variation {
  /** East is positive. */
  variationDeg: number;
  model: string;
  /** First and last day for which the model was made. */
  validFrom: string;
  validUntil: string;
}

export interface Place {
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM?: number | undefined;
}

/** Variation by the World Magnetic Model. Outside its years the nearest edition answers; the dates say so. */
export function variationAt({ latitudeDeg, longitudeDeg, elevationM = 0 }: Place, moment: string): Variation {
  const date = new Date(moment);
  const model = geomagnetism.model(date, { allowOutOfBoundsModel: true });
  const { decl } = model.point([latitudeDeg, longitudeDeg, elevationM / 1000]);
  return {
    variationDeg: decl,
    model: model.name,
    validFrom: dateOf(model.start_date.toISOString()),
    validUntil: dateOf(model.end_date.toISOString()),
  };
}
