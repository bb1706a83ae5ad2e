import type { ConfigurationResult } from '../calc/configurations/other-configurations.ts';
import type { Schedule } from '../calc/mass/schedule.ts';
import type { PackContext } from './context.ts';

/** A configuration of the aircraft, with the data of its documents. */
export interface ConfigurationContext {
  /** Suffix of the ids of its documents; empty for the configuration of the visit. */
  suffix: string;
  /** Name in the record; undefined if the aircraft has only one. */
  name: string | undefined;
  context: PackContext;
}

/** Returns the configuration of the visit, and every other that has an empty mass. */
export function configurationContexts(context: PackContext): ConfigurationContext[] {
  const { visit, results } = context;
  const worked = { suffix: '', name: visit.aircraft.configuration?.name, context };
  return [
    worked,
    ...results.configurations.map((configuration) => ({
      suffix: `-${configuration.empty.id.toLowerCase().replaceAll('.', '-')}`,
      name: configuration.empty.name,
      context: inConfiguration(context, configuration),
    })),
  ];
}

/** Returns the data of the documents of another configuration: its limits, its empty condition and its loadings. */
function inConfiguration(
  context: PackContext,
  { empty, aircraft, loading, lateral }: ConfigurationResult,
): PackContext {
  const { massKg, momentKgMm, armMm, macPercent, weighedOn, reference } = empty;
  const schedule: Schedule = {
    ...{ basis: 'computed', massKg, momentKgMm, armMm, macPercent, weighedOn },
    expanded: undefined,
    changesSinceWeighing: 0,
    usefulLoadKg: loading.limits.usefulLoad.kg,
    supersedes: reference,
    history: [],
  };
  return {
    ...context,
    visit: { ...context.visit, aircraft },
    results: { ...context.results, schedule, loading, lateral, configurations: [] },
  };
}
