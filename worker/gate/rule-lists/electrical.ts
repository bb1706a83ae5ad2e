import type { Rule } from '../rule.ts';
import { aluminiumWireThin } from '../rules/aluminium-wire-thin.ts';
import { circuitUnprotected } from '../rules/circuit-unprotected.ts';
import { enduranceShort } from '../rules/endurance-short.ts';
import { essentialLoadShed } from '../rules/essential-load-shed.ts';
import { groundReturnHigh } from '../rules/ground-return-high.ts';
import { groundReturnUnstated } from '../rules/ground-return-unstated.ts';
import { loadCircuitUnstated } from '../rules/load-circuit-unstated.ts';
import { loadDrawsMore } from '../rules/load-draws-more.ts';
import { lowVoltageWarningLate } from '../rules/low-voltage-warning-late.ts';
import { mainFeederDropExceeded } from '../rules/main-feeder-drop-exceeded.ts';
import { protectionAboveWire } from '../rules/protection-above-wire.ts';
import { protectionBelowLoad } from '../rules/protection-below-load.ts';
import { protectionUnknown } from '../rules/protection-unknown.ts';
import { sourceCurveAmbiguous } from '../rules/source-curve-ambiguous.ts';
import { sourceOver80Percent } from '../rules/source-over-80-percent.ts';
import { sourceOverloaded } from '../rules/source-overloaded.ts';
import { voltageDropExceeded } from '../rules/voltage-drop-exceeded.ts';
import { voltageDropUnknown } from '../rules/voltage-drop-unknown.ts';
import { wireOverloaded } from '../rules/wire-overloaded.ts';
import { wireRatingUnknown } from '../rules/wire-rating-unknown.ts';
import { wireTooHot } from '../rules/wire-too-hot.ts';

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
  voltageDropUnknown,
  mainFeederDropExceeded,
  groundReturnHigh,
  groundReturnUnstated,
  aluminiumWireThin,
];
