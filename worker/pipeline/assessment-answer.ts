import type { Results } from '../calc/results.ts';
import { addressForms } from '../calc/surveillance/address.ts';
import type { SurveillanceResult } from '../calc/surveillance/results.ts';
import { RULE_SET } from '../gate/rule-set.ts';
import type { Assessed } from './assess.ts';

/** The answer to an assessment, as plain JSON in the units of calculation: kg, mm, l, and those that names end in. */
export function assessmentAnswer(assessed: Assessed): Record<string, unknown> {
  const { recordSha256, assessmentSha256, isReleasable, findings, results, regime, visit } = assessed;
  return {
    recordSha256,
    assessmentSha256,
    isReleasable,
    comparedWithEarlierPacks: results.open.isKnown,
    ruleSet: RULE_SET,
    regime: { id: regime.id, version: regime.version },
    findings,
    results: {
      ...answeredResults(results),
      bulletins: (visit.bulletins?.items ?? []).map(({ id }, index) => ({
        id,
        applies: results.applicability[index],
      })),
    },
  };
}

function answeredResults(results: Results): Record<string, unknown> {
  const { change, loading, wiring, prediction, weighing, comparison, residual, schedule } = results;
  const { electrical, antennas, surveillance, compass, engineRuns, due, clock } = results;
  return {
    change: {
      lines: change.lines,
      massKg: change.massKg,
      momentKgMm: change.momentKgMm,
      equipment: change.after,
    },
    prediction,
    weighing,
    comparison,
    residual,
    schedule,
    loading: loading && {
      extremes: loading.extremes,
      minimumSoloKg: loading.minimumSoloKg,
      leastPilot: loading.leastPilot,
      fullFuelKg: loading.limits.fullFuelKg,
      payloadFullFuelKg: loading.limits.fullTanksPayload.kg,
      limits: loading.limits,
      table: loading.table,
    },
    electrical,
    wiring: wiring && {
      harness: wiring.harness,
      nets: wiring.nets.map(({ pins, circuits }) => ({ pins: pins.map(({ key }) => key), circuits })),
    },
    antennas,
    surveillance: surveillance && answeredSurveillance(surveillance),
    compass,
    engineRuns,
    due,
    clock,
  };
}

/** Addresses as people read them: six hexadecimal digits. */
function answeredSurveillance({ address: _, forms, devices, ...tests }: SurveillanceResult): Record<string, unknown> {
  const hexadecimal = (address: number | undefined): string | undefined =>
    address === undefined ? undefined : addressForms(address).hexadecimal;
  return {
    address: forms,
    devices: devices.map(({ id, set, received }) => ({ id, set: hexadecimal(set), received: hexadecimal(received) })),
    ...tests,
  };
}
