import type { CircuitResult, Drop } from '../../calc/electrical/electrical-result.ts';
import { type Conductor, copperGauge } from '../../calc/electrical/wire-table.ts';
import { isAtMost } from '../../calc/numbers/limit-met.ts';
import type { Circuit } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import type { Bound, Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { printGauge } from './print-gauge.ts';

/** Returns circuits with their wire and protection, and the reasons and charts behind the figures. */
export function circuitRows(
  { fmt }: PackContext,
  circuits: readonly Circuit[],
  results: readonly CircuitResult[],
): View {
  const pairs = circuits.flatMap((circuit, index) => {
    const result = results[index];
    return result ? [{ circuit, result }] : [];
  });
  const notes = circuits.flatMap(
    ({ name, gauge, material, ambientC, rating, protection, unprotectedBecause }, index) => [
      ...aluminiumNote(fmt, name, { gauge, material }),
      ...(rating ? [fmt.text(m.circuitRows_capacityWire, { name, from: rating.from })] : []),
      ...reducedNote(fmt, name, ambientC, results[index]),
      ...(protection?.limitA === undefined ? [] : [fmt.text(m.circuitRows_greatestProtectionRecordStates, { name })]),
      ...(unprotectedBecause === undefined ? [] : [fmt.text(m.circuitRows_notProtected, { name, unprotectedBecause })]),
    ],
  );
  const feeders = pairs.flatMap(({ circuit, result }) => feederNote(fmt, circuit, result));
  return {
    hasCircuits: pairs.length > 0,
    circuits: pairs.map(({ circuit, result }) => circuitRow(fmt, circuit, result)),
    hasFeeders: feeders.length > 0,
    feeders: feeders.join('. '),
    hasCircuitNotes: notes.length > 0,
    circuitNotes: notes.join('. '),
  };
}

/** A wire in surroundings hotter than those of the table. */
function reducedNote(fmt: Formatter, name: string, ambientC: number, result: CircuitResult | undefined): string[] {
  if (result?.ampacity?.from !== 'table-reduced') return [];
  return [fmt.text(m.circuitRows_reducedCapacity, { name, ambient: fmt.asIs(ambientC) })];
}

/** A main power wire has its own limit and current, and that of the battery carries the start. */
function feederNote(
  fmt: Formatter,
  { name, mainFeeder }: Circuit,
  { continuousDrop, startDrop }: CircuitResult,
): string[] {
  if (!mainFeeder) return [];
  const what =
    mainFeeder.kind === 'source'
      ? fmt.text(m.circuitRows_ratedCurrentSource)
      : fmt.text(m.circuitRows_fiveMinuteRateBattery);
  return [
    fmt.text(m.circuitRows_held2RegulatedVoltage, { name, orDash: orDash(fmt, continuousDrop?.currentA, 1), what }),
    ...(startDrop
      ? [
          fmt.text(m.circuitRows_startDrop, {
            name,
            amps: fmt.plain(startDrop.currentA, 1),
            drop: fmt.plain(startDrop.dropV, 2),
          }),
        ]
      : []),
  ];
}

/** Returns the note that aluminium is calculated as its equivalent copper wire. */
function aluminiumNote(fmt: Formatter, name: string, conductor: Conductor): string[] {
  const copper = copperGauge(conductor);
  if (conductor.material !== 'aluminium' || copper === undefined) return [];
  return [fmt.text(m.circuitRows_aluminiumNoComputedCurrent, { name, gauge: conductor.gauge, copper })];
}

function orDash(fmt: Formatter, value: number | undefined, decimals: number, bound?: Bound): string {
  return value === undefined ? DASH : fmt.plain(value, decimals, bound);
}

function circuitRow(fmt: Formatter, circuit: Circuit, result: CircuitResult): Record<string, string> {
  const print = (value: number | undefined, decimals: number, bound?: Bound): string =>
    orDash(fmt, value, decimals, bound);
  const { protection } = circuit;
  const { peakDrop, continuousDrop } = result;
  return {
    name: circuit.name,
    wire: `${printGauge(circuit)} / ${circuit.temperatureRating}`,
    load: `${print(result.continuousA, 1)} / ${print(result.peakA, 1)}`,
    carries: print(result.ampacity?.currentA, 1, 'most'),
    heat: print(result.conductorC, 0),
    protection: protection ? `${fmt.term(protection.kind)} ${print(protection.ratingA, 1)}` : fmt.text(m.none),
    allowed: protection ? print(result.protectionLimit?.limitA, 1, 'most') : DASH,
    run: print(circuit.runM, 1),
    longest: print(result.longestRunM, 1, 'most'),
    drop: dropText(fmt, continuousDrop),
    limit: print(continuousDrop?.limitV, 2),
    peakDrop: dropText(fmt, peakDrop),
    peakLimit: print(peakDrop?.limitV, 2),
    measured: dropText(
      fmt,
      circuit.measuredDropV === undefined ? undefined : { dropV: circuit.measuredDropV, limitV: result.measuredLimitV },
    ),
    groundReturn: print(circuit.groundReturnMilliohm, 1),
  };
}

/** Returns a voltage drop; one over its limit has enough digits to show that it is. */
function dropText(fmt: Formatter, drop: Pick<Drop, 'dropV' | 'limitV'> | undefined): string {
  if (drop === undefined) return DASH;
  return isAtMost(drop.dropV, drop.limitV) ? fmt.plain(drop.dropV, 2) : fmt.plainApart(drop.dropV, drop.limitV, 2)[0];
}
