import type { Rule } from '../../rule.ts';
import { aluminiumWireThin } from './aluminium-wire-thin.ts';
import { circuitAmbientLow } from './circuit-ambient-low.ts';
import { circuitRunShort } from './circuit-run-short.ts';
import { circuitUnprotected } from './circuit-unprotected.ts';
import { circuitWithoutLoad } from './circuit-without-load.ts';
import { enduranceShort } from './endurance-short.ts';
import { essentialLoadShed } from './essential-load-shed.ts';
import { groundReturnHigh } from './ground-return-high.ts';
import { groundReturnUnstated } from './ground-return-unstated.ts';
import { loadCircuitUnfit } from './load-circuit-unfit.ts';
import { loadCircuitUnstated } from './load-circuit-unstated.ts';
import { loadDrawsMore } from './load-draws-more.ts';
import { loadPhaseMissing } from './load-phase-missing.ts';
import { lowVoltageWarningLate } from './low-voltage-warning-late.ts';
import { mainFeederDropComputed } from './main-feeder-drop-computed.ts';
import { mainFeederDropExceeded } from './main-feeder-drop-exceeded.ts';
import { protectionAboveWire } from './protection-above-wire.ts';
import { protectionBelowLoad } from './protection-below-load.ts';
import { protectionUnknown } from './protection-unknown.ts';
import { shedLoadOnBattery } from './shed-load-on-battery.ts';
import { sourceCurveAmbiguous } from './source-curve-ambiguous.ts';
import { sourceOver80Percent } from './source-over-80-percent.ts';
import { sourceOverloaded } from './source-overloaded.ts';
import { tractionCheckIncomplete } from './traction-check-incomplete.ts';
import { tractionDisconnectFailed } from './traction-disconnect-failed.ts';
import { tractionInsulationLow } from './traction-insulation-low.ts';
import { tractionIsolationUnproved } from './traction-isolation-unproved.ts';
import { voltageDropExceeded } from './voltage-drop-exceeded.ts';
import { voltageDropIntermittent } from './voltage-drop-intermittent.ts';
import { voltageDropUnknown } from './voltage-drop-unknown.ts';
import { wireOverloaded } from './wire-overloaded.ts';
import { wireRatingUnknown } from './wire-rating-unknown.ts';
import { wireTooHot } from './wire-too-hot.ts';

/** Rules of sources, battery, loads and circuits. */
export const ELECTRICAL_RULES: readonly Rule[] = [
  sourceCurveAmbiguous,
  sourceOverloaded,
  sourceOver80Percent,
  lowVoltageWarningLate,
  enduranceShort,
  essentialLoadShed,
  loadCircuitUnstated,
  loadDrawsMore,
  circuitUnprotected,
  protectionAboveWire,
  protectionUnknown,
  protectionBelowLoad,
  wireTooHot,
  wireOverloaded,
  wireRatingUnknown,
  voltageDropExceeded,
  voltageDropIntermittent,
  voltageDropUnknown,
  mainFeederDropExceeded,
  mainFeederDropComputed,
  groundReturnHigh,
  groundReturnUnstated,
  aluminiumWireThin,
  tractionIsolationUnproved,
  tractionInsulationLow,
  tractionDisconnectFailed,
  tractionCheckIncomplete,
  loadPhaseMissing,
  loadCircuitUnfit,
  circuitAmbientLow,
  circuitWithoutLoad,
  circuitRunShort,
  shedLoadOnBattery,
];
