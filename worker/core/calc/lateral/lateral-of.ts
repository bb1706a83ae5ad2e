import type { Aircraft } from '../../record/visit.ts';
import type { EmptyAircraft } from '../loading/empty-aircraft.ts';
import type { LoadingSettings, LoadingSheet } from '../loading/loading-sheet.ts';
import { lateralLoading } from './lateral.ts';
import type { LateralResult } from './lateral-result.ts';

type OfEmpty = Pick<LateralResult, 'empty' | 'basis' | 'expanded' | 'comparison'>;

const NOTHING_LOADED = { extremes: undefined, margins: [], loadings: [] };

/** Returns the lateral axis of an aircraft, empty and loaded; of the empty one only if nothing can be loaded. */
export function lateralOf(
  aircraft: Aircraft,
  empty: EmptyAircraft | undefined,
  sheet: LoadingSheet | undefined,
  ofEmpty: OfEmpty,
  { leastPilotKg }: LoadingSettings,
): LateralResult {
  const lateralKgMm = empty?.lateralKgMm;
  return empty && sheet && lateralKgMm !== undefined
    ? { ...ofEmpty, ...lateralLoading(aircraft, { ...empty, lateralKgMm }, sheet, { leastPilotKg }) }
    : { ...ofEmpty, ...NOTHING_LOADED };
}
