import type { Results } from '../../../worker/core/calc/results.ts';
import type { Assessed } from '../../../worker/core/core.ts';
import { MAX } from '../../../worker/core/text/figure.ts';
import { type Formatter, formatterFor } from '../../../worker/core/text/formatter.ts';
import { printNumber } from '../../../worker/core/text/numbers.ts';
import type { Figure } from './protocol.ts';

type Topic = (results: Results, fmt: Formatter) => Figure[];

/** Main figures of each topic, each with the document that shows its calculation. */
const TOPICS: readonly Topic[] = [change, weighing, schedule, loading, electrical, compass];

/** Returns the main results of a visit, as printed. */
export function figuresOf({ results, visit }: Pick<Assessed, 'results' | 'visit'>): Figure[] {
  const fmt = formatterFor(visit.units);
  return TOPICS.flatMap((topic) => topic(results, fmt));
}

function change({ change: { lines, massKg, momentKgMm } }: Results, fmt: Formatter): Figure[] {
  if (lines.length === 0) return [];
  const value = `${fmt.measure('mass', massKg, { signed: true })}, ${fmt.measure('moment', momentKgMm, { signed: true })}`;
  return [{ name: 'Change of equipment', value, document: 'equipment-list' }];
}

function weighing({ weighing: weighed }: Results, fmt: Formatter): Figure[] {
  if (!weighed) return [];
  const { empty, expanded } = weighed;
  const mass = `${fmt.number('mass', empty.massKg)} ± ${fmt.measure('mass', expanded.massKg)}`;
  const arm = `${fmt.number('arm', empty.armMm, { extra: 1 })} ± ${fmt.measure('arm', expanded.armMm, { extra: 1 })}`;
  return [
    { name: 'Weighed empty mass, k = 2', value: mass, document: 'weighing-report' },
    { name: 'Weighed empty arm, k = 2', value: arm, document: 'weighing-report' },
  ];
}

function schedule({ schedule: revised }: Results, fmt: Formatter): Figure[] {
  if (!revised) return [];
  const document = 'weight-and-balance-schedule';
  return [
    { name: 'Empty mass', value: `${fmt.measure('mass', revised.massKg)}, ${revised.basis}`, document },
    { name: 'Empty arm', value: fmt.measure('arm', revised.armMm, { extra: 1 }), document },
    {
      name: 'Crew, baggage and fuel together',
      value: fmt.measure('mass', revised.usefulLoadKg, MAX),
      document,
    },
  ];
}

function loading({ loading: sheet }: Results, fmt: Formatter): Figure[] {
  if (!sheet) return [];
  const value = fmt.measure('mass', sheet.limits.fullTanksPayload.kg, MAX);
  return [{ name: 'Left for crew and baggage with full tanks', value, document: 'loading-sheet' }];
}

function electrical({ electrical: system }: Results): Figure[] {
  const { endurance } = system ?? {};
  if (endurance?.minutes === undefined) return [];
  const value = `${printNumber(endurance.minutes, 0)} min, ${printNumber(endurance.neededMin, 0)} needed`;
  return [{ name: 'Battery after its source failed', value, document: 'electrical-load-analysis' }];
}

function compass({ compass: swung }: Results): Figure[] {
  return (swung?.swings ?? []).map(({ state, greatestDeviationDeg }) => ({
    name: `Largest deviation, ${state.replaceAll('-', ' ')}`,
    value: `${printNumber(greatestDeviationDeg, 1)}°`,
    document: 'compass-card',
  }));
}
