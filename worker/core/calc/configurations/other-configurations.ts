import type { Aircraft, Visit } from '../../record/visit.ts';
import { acrossOf } from '../lateral/across.ts';
import { statesLateral } from '../lateral/lateral.ts';
import { lateralOf } from '../lateral/lateral-of.ts';
import type { LateralResult } from '../lateral/lateral-result.ts';
import type { EmptyAircraft } from '../loading/empty-aircraft.ts';
import { type LoadingSettings, type LoadingSheet, loadingSheet } from '../loading/loading-sheet.ts';
import { type EquipmentChange, equipmentChange } from '../mass/equipment-change.ts';
import { type ConfigurationEmpty, configurationEmpties } from './configuration-empty.ts';
import { configuredAircraft } from './configured.ts';

/** Another configuration of the aircraft: its limits, its empty condition, and its loading sheet. */
export interface ConfigurationResult {
  empty: ConfigurationEmpty;
  /** The aircraft in this configuration. */
  aircraft: Aircraft;
  loading: LoadingSheet;
  lateral: LateralResult | undefined;
}

/**
 * Returns every other configuration that has an empty condition, with its own loading sheet.
 *
 * @source common practice, no source
 */
export function otherConfigurations(
  visit: Visit,
  worked: EmptyAircraft | undefined,
  change: EquipmentChange,
  settings: LoadingSettings,
): ConfigurationResult[] {
  const { configurations = [] } = visit.aircraft;
  if (configurations.length === 0) return [];
  const across = statesLateral(visit) ? equipmentChange(acrossOf(visit)) : undefined;
  const empties = configurationEmpties(visit, worked, { along: change, across });
  return configurations.flatMap((configuration): ConfigurationResult[] => {
    const empty = empties.find(({ id }) => id === configuration.id);
    if (!empty) return [];
    const aircraft = configuredAircraft(visit.aircraft, configuration);
    const loading = loadingSheet({ aircraft, units: visit.units }, empty, settings);
    return [{ empty, aircraft, loading, lateral: lateralIn(aircraft, empty, loading, settings) }];
  });
}

function lateralIn(
  aircraft: Aircraft,
  empty: ConfigurationEmpty,
  loading: LoadingSheet,
  settings: LoadingSettings,
): LateralResult | undefined {
  const { massKg, lateralKgMm } = empty;
  if (lateralKgMm === undefined) return undefined;
  const ofEmpty = {
    empty: { massKg, momentKgMm: lateralKgMm, armMm: lateralKgMm / massKg },
    basis: 'computed' as const,
    expanded: undefined,
    comparison: undefined,
  };
  return lateralOf(aircraft, empty, loading, ofEmpty, settings);
}
