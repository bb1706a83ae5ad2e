import { envelopeIn, statesEnvelope } from '../../../worker/core/calc/loading/aircraft-envelope.ts';
import {
  checkLoading,
  type FlightVerdict,
  type LoadingCheck,
  type Remedy,
} from '../../../worker/core/calc/loading/check.ts';
import { lateralOfEmpty } from '../../../worker/core/calc/loading/empty-aircraft.ts';
import { tanksOf } from '../../../worker/core/calc/loading/fuel.ts';
import { cgMm } from '../../../worker/core/calc/mass/mass-moment.ts';
import { isAtMost } from '../../../worker/core/calc/numbers/limit-met.ts';
import type { LoadingFacts } from '../../../worker/core/pack/loading-facts.ts';
import { MASS_LIMIT_NAMES } from '../../../worker/core/pack/mass-limit-name.ts';
import { MAX, MIN } from '../../../worker/core/text/figure.ts';
import type { Formatter } from '../../../worker/core/text/formatter.ts';
import * as m from '../../../worker/core/text/generated/messages.ts';
import { type Asked, BURN, type Entry, mustBeTyped, type Typed } from './fields.ts';

// Loadings are calculated with the code of `calc`: a second implementation would sooner or later differ from the
// pack. The page gets the aircraft and its empty mass as data; superseded or withdrawn figures are not given out.

/** Result of a loading check. It is `inside` only if all amounts are known and within limits. */
export interface Answer {
  tone: 'neutral' | 'inside' | 'outside';
  head: string;
  lines: string[];
  /** Undefined if nothing was checked. */
  check?: LoadingCheck;
  /** Station that the result is about. */
  station?: string;
}

/** Rounding up, so that a stated amount to remove or add is enough. */
const ENOUGH = MIN;

/** Checks the typed loading, or states what is missing. */
export function answerTo(typed: Typed, facts: LoadingFacts, asked: readonly Asked[], fmt: Formatter): Answer {
  const entryFor = ({ id }: Asked): Entry => typed[id] ?? { state: 'empty' };
  const wrong = asked.flatMap((field) => wrongLine(field, entryFor(field), fmt));
  const [firstWrong, ...others] = wrong;
  if (firstWrong !== undefined) return { tone: 'outside', head: firstWrong, lines: others };
  if (asked.every((field) => entryFor(field).state === 'empty'))
    return neutral(hasTanks(asked) ? fmt.text(m.answer_typeWhoWhatGoes) : fmt.text(m.answer_typeWhoWhatGoesAboard));
  const check = checkOf(typed, facts, asked);
  const { state } = check.verdict;
  if (state === 'no-pilot') return neutral(fmt.text(m.answer_enterPilotFirst));
  const missing = asked.filter((field) => mustBeTyped(field) && entryFor(field).state === 'empty');
  if (missing.length > 0 && !isSettled(check, facts, missing)) {
    const names = missing.map(({ name }) => name).join('; ');
    return neutral(fmt.text(m.answer_stillTypedType0, { names }));
  }
  return {
    tone: state === 'inside' ? 'inside' : 'outside',
    head: headline(check, facts, fmt),
    lines: [...stateLines(check, facts, fmt), ...cureLines(check, fmt, asked)],
    check,
    ...('station' in check.verdict && { station: check.verdict.station }),
  };
}

/** Whether a verdict is final with fields still empty: true only for limits already exceeded. */
function isSettled({ verdict, path }: LoadingCheck, { aircraft }: LoadingFacts, missing: readonly Asked[]): boolean {
  const isMissing = (kind: Asked['kind']): boolean => missing.some((field) => field.kind === kind);
  if (verdict.state === 'too-heavy') return true;
  if (verdict.state === 'outside' || verdict.state === 'no-fuel') return missing.every(({ kind }) => kind === 'burn');
  if (verdict.state === 'too-light' || verdict.state === 'no-solo') return !isMissing('pilot');
  if (verdict.state !== 'limit-exceeded') return false;
  const { maximumLandingMassKg = Number.POSITIVE_INFINITY } = aircraft;
  // Fuel burn can bring the landing mass below its maximum, unless the aircraft is too heavy without fuel.
  return !(
    verdict.exceeded.kind === 'landing-mass' &&
    isMissing('burn') &&
    isAtMost(path.at(-1)?.massKg ?? 0, maximumLandingMassKg)
  );
}

const hasTanks = (asked: readonly Asked[]): boolean => asked.some(({ kind }) => kind === 'fuel');

const neutral = (head: string): Answer => ({ tone: 'neutral', head, lines: [] });

function wrongLine({ name, most, unit }: Asked, { state }: Entry, fmt: Formatter): string[] {
  if (state === 'unreadable') return [fmt.text(m.answer_notJudgedNotNumber, { name, value: fmt.asIs(8.5) })];
  if (state === 'negative') return [fmt.text(m.answer_notJudgedCannotNegative, { name })];
  if (state === 'more-than-it-holds')
    return [fmt.text(m.answer_notJudgedCannotMore, { name, most: fmt.asIs(most, 1, 'most'), unit })];
  return [];
}

function checkOf(typed: Typed, facts: LoadingFacts, asked: readonly Asked[]): LoadingCheck {
  const kgOf = (id: string): number => {
    const entry = typed[id];
    return entry?.state === 'read' ? entry.kg : 0;
  };
  const stations = asked.filter(({ kind }) => kind !== 'burn');
  return checkLoading(facts.aircraft, facts.empty, {
    load: Object.fromEntries(stations.map(({ id }) => [id, kgOf(id)])),
    burnKg: kgOf(BURN),
    envelope: envelopeIn(facts.aircraft),
    leastPilot: facts.leastPilot,
    lateral: lateralOfEmpty(facts.empty),
    stepsKg: Object.fromEntries(stations.map(({ id, kgPerUnit }) => [id, kgPerUnit / 2])),
  });
}

function headline({ verdict }: LoadingCheck, { aircraft }: LoadingFacts, fmt: Formatter): string {
  const nameOf = (id: string): string => aircraft.stations.find((station) => station.id === id)?.name ?? id;
  if (verdict.state === 'inside' && statesEnvelope(aircraft))
    return tanksOf(aircraft).length > 0 ? fmt.text(m.answer_insideUntilFuelGone) : fmt.text(m.answer_inside);
  if (verdict.state === 'inside') return fmt.text(m.answer_withinMassesThereNo);
  if (verdict.state === 'no-pilot') return fmt.text(m.answer_enterPilotFirst);
  if (verdict.state === 'no-solo') return fmt.text(m.answer_nobodyMayFlyAlone, { station: nameOf(verdict.station) });
  if (verdict.state === 'too-light')
    return fmt.text(m.answer_belowLeastPilot, {
      station: nameOf(verdict.station),
      under: fmt.measure('mass', verdict.underKg, ENOUGH),
      least: fmt.measure('mass', verdict.leastKg, ENOUGH),
    });
  if (verdict.state === 'no-fuel') return fmt.text(m.answer_noUsableFuelAboard);
  if (verdict.state === 'no-reserve') return fmt.text(m.answer_burnsAllUsableFuel);
  if (verdict.state === 'too-little-fuel') return fmt.text(m.answer_moreBurntThanAboard);
  if (verdict.state === 'too-heavy')
    return fmt.text(m.answer_tooHeavy, { over: fmt.measure('mass', verdict.overKg, ENOUGH) });
  if (verdict.state === 'limit-exceeded') return overLimit(verdict, aircraft, fmt);
  if (verdict.state === 'too-light-in-flight')
    return fmt.text(m.answer_tooLightInFlight, { under: fmt.measure('mass', verdict.underKg, ENOUGH) });
  if (verdict.state === 'outside-laterally')
    return fmt.text(m.answer_outsideSideways, {
      side: fmt.term(verdict.side),
      byArm: fmt.measure('arm', verdict.overMm, ENOUGH),
    });
  const { side, margin } = verdict.worst;
  const [byMass, byArm] = [fmt.measure('mass', -margin, ENOUGH), fmt.measure('arm', -margin, ENOUGH)];
  if (side === 'below') return fmt.text(m.answer_outsideBelowMassesEnvelope, { byMass });
  if (side === 'above') return fmt.text(m.answer_outsideAboveMassesEnvelope, { byMass });
  return side === 'forward'
    ? fmt.text(m.answer_outsideBeyondForwardLimit, { byArm })
    : fmt.text(m.answer_outsideBeyondAftLimit, { byArm });
}

/**
 * Returns the result for a loading over the limit of a station, over a limit that the record states as a sentence, or
 * over a mass limit.
 */
function overLimit(
  { exceeded, overKg }: Extract<FlightVerdict, { state: 'limit-exceeded' }>,
  { stations, loadingLimits = [] }: LoadingFacts['aircraft'],
  fmt: Formatter,
): string {
  const over = fmt.measure('mass', overKg, ENOUGH);
  if (exceeded.kind === 'station') {
    const station = stations.find(({ id }) => id === exceeded.id);
    return fmt.text(m.answer_overLimit, { station: station?.name ?? exceeded.id, over });
  }
  if (exceeded.kind === 'loading-limit') {
    const stated = loadingLimits.find(({ id }) => id === exceeded.id);
    return fmt.text(m.answer_overLimit2, { over, stated: stated?.text ?? exceeded.id });
  }
  if (exceeded.kind === 'matched-ballast') {
    const station = stations.find(({ id }) => id === exceeded.id);
    return fmt.text(m.answer_overMatched, { station: station?.name ?? exceeded.id, over });
  }
  return fmt.text(m.answer_over, { massLimitNames: fmt.text(MASS_LIMIT_NAMES[exceeded.kind]), over });
}

/** Returns mass and balance at take-off and after the planned burn, each with its maximum. */
function stateLines({ takeOff, landing, path }: LoadingCheck, { aircraft }: LoadingFacts, fmt: Formatter): string[] {
  const { maximumMassKg, maximumLandingMassKg } = aircraft;
  const hasArms = statesEnvelope(aircraft);
  const state = (name: string, at: { massKg: number; momentKgMm: number }, maximumKg: number | undefined): string => {
    const line = hasArms
      ? fmt.text(m.answer_at, { name, mass: fmt.measure('mass', at.massKg), cg: fmt.measure('arm', cgMm(at)) })
      : `${name}: ${fmt.measure('mass', at.massKg)}`;
    return maximumKg === undefined
      ? `${line}.`
      : fmt.text(m.answer_maximum, { line, maximum: fmt.measure('mass', maximumKg, MAX) });
  };
  return [
    state(fmt.text(m.takeOff), takeOff, maximumMassKg),
    ...(landing && path.length > 1 ? [state(fmt.text(m.answer_afterPlannedBurn), landing, maximumLandingMassKg)] : []),
  ];
}

/**
 * Returns the changes that would bring the loading inside, in the units of the field; or the mass to remove if no
 * single change is enough.
 */
function cureLines({ verdict, cures }: LoadingCheck, fmt: Formatter, asked: readonly Asked[]): string[] {
  if (cures.length > 0) return cures.map((cure) => cureLine(cure, fmt, asked));
  if (verdict.state === 'too-heavy' || verdict.state === 'limit-exceeded')
    return [fmt.text(m.answer_noSingleChangeEnough, { over: fmt.measure('mass', verdict.overKg, ENOUGH) })];
  return verdict.state === 'outside' ? [fmt.text(m.answer_noSingleChangeEnough2)] : [];
}

/**
 * Returns one change. Steps are half units of the field, so the amount needs no rounding unless all of it must be
 * removed.
 */
function cureLine({ station, byKg }: Remedy, fmt: Formatter, asked: readonly Asked[]): string {
  const field = asked.find(({ id }) => id === station);
  const amount = fmt.asIs(Math.abs(byKg) / (field?.kgPerUnit ?? 1), 1, byKg < 0 ? 'least' : 'most');
  const [name, much] = [field?.name ?? station, `${amount} ${field?.unit ?? fmt.unit('mass')}`];
  return byKg < 0 ? fmt.text(m.answer_insideLess, { name, much }) : fmt.text(m.answer_insideMore, { name, much });
}
