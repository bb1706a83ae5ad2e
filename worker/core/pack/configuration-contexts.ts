import type { ConfigurationResult } from '../calc/configurations/other-configurations.ts';
import type { Schedule } from '../calc/mass/schedule.ts';
import { articleIds } from './article-ids.ts';
import type { PackContext } from './context.ts';

/** A configuration of the aircraft, with the data of its documents. */
export interface ConfigurationContext {
  /** Id of its loading sheet. */
  articleId: string;
  /** Name in the record; undefined if the aircraft has only one. */
  name: string | undefined;
  context: PackContext;
}

/** Returns the configuration of the visit, and every other that has an empty mass. */
export function configurationContexts(context: PackContext): ConfigurationContext[] {
  const { visit, results } = context;
  const worked = { articleId: 'loading-sheet', name: visit.aircraft.configuration?.name, context };
  const ids = articleIds(
    'loading-sheet',
    results.configurations.map(({ empty }) => empty.id),
  );
  return [
    worked,
    ...results.configurations.map((configuration, index) => ({
      articleId: ids[index] ?? '',
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
    basis: 'computed',
    massKg,
    momentKgMm,
    armMm,
    macPercent,
    weighedOn,
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
