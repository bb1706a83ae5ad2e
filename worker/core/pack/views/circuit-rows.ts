import type { CircuitResult } from '../../calc/electrical/electrical-result.ts';
import { type Conductor, copperGauge } from '../../calc/electrical/wire-table.ts';
import type { Circuit } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
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
  const notes = circuits.flatMap(({ name, gauge, material, rating, protection, unprotectedBecause }) => [
    ...aluminiumNote(fmt, name, { gauge, material }),
    ...(rating ? [fmt.text(m.circuitRows_capacityWire, { name, from: rating.from })] : []),
    ...(protection?.limitA === undefined ? [] : [fmt.text(m.circuitRows_greatestProtectionRecordStates, { name })]),
    ...(unprotectedBecause === undefined ? [] : [fmt.text(m.circuitRows_notProtected, { name, unprotectedBecause })]),
  ]);
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

/** A main power wire has its own limit and current. */
function feederNote(fmt: Formatter, { name, mainFeeder }: Circuit, { continuousDrop }: CircuitResult): string[] {
  if (!mainFeeder) return [];
  const what =
    mainFeeder.kind === 'source'
      ? fmt.text(m.circuitRows_ratedCurrentSource)
      : fmt.text(m.circuitRows_fiveMinuteRateBattery);
  return [
    fmt.text(m.circuitRows_held2RegulatedVoltage, { name, orDash: orDash(fmt, continuousDrop?.currentA, 1), what }),
  ];
}

/** Returns the note that aluminium is calculated as its equivalent copper wire. */
function aluminiumNote(fmt: Formatter, name: string, conductor: Conductor): string[] {
  const copper = copperGauge(conductor);
  if (conductor.material !== 'aluminium' || copper === undefined) return [];
  return [fmt.text(m.circuitRows_aluminiumNoComputedCurrent, { name, gauge: conductor.gauge, copper })];
}

function orDash(fmt: Formatter, value: number | undefined, decimals: number): string {
  return value === undefined ? DASH : fmt.plain(value, decimals);
}

function circuitRow(fmt: Formatter, circuit: Circuit, result: CircuitResult): Record<string, string> {
  const print = (value: number | undefined, decimals: number): string => orDash(fmt, value, decimals);
  const { protection } = circuit;
  const { peakDrop, continuousDrop } = result;
  return {
    name: circuit.name,
    wire: `${printGauge(circuit)} / ${circuit.temperatureRating}`,
    load: `${print(result.continuousA, 1)} / ${print(result.peakA, 1)}`,
    carries: print(result.ampacity?.currentA, 1),
    heat: print(result.conductorC, 0),
    protection: protection ? `${fmt.term(protection.kind)} ${print(protection.ratingA, 1)}` : fmt.text(m.none),
    allowed: protection ? print(result.protectionLimit?.limitA, 1) : DASH,
    run: print(circuit.runM, 1),
    longest: print(result.longestRunM, 1),
    drop: print(continuousDrop?.dropV, 2),
    limit: print(continuousDrop?.limitV, 2),
    peakDrop: print(peakDrop?.dropV, 2),
    peakLimit: print(peakDrop?.limitV, 2),
    measured: print(circuit.measuredDropV, 2),
    groundReturn: print(circuit.groundReturnMilliohm, 1),
  };
}
