import type { Rule } from '../rule.ts';
import { cableNearControls } from '../rules/cable-near-controls.ts';
import { continuityNotTested } from '../rules/continuity-not-tested.ts';
import { foundWireLive } from '../rules/found-wire-live.ts';
import { groundOpen } from '../rules/ground-open.ts';
import { insulationLow } from '../rules/insulation-low.ts';
import { levelsDiffer } from '../rules/levels-differ.ts';
import { pinUsedTwice } from '../rules/pin-used-twice.ts';
import { powerMeetsGround } from '../rules/power-meets-ground.ts';
import { powerUnprotected } from '../rules/power-unprotected.ts';
import { receiveWithoutTransmit } from '../rules/receive-without-transmit.ts';
import { shieldUnterminated } from '../rules/shield-unterminated.ts';
import { transmitMeetsTransmit } from '../rules/transmit-meets-transmit.ts';
import { wireEndOpen } from '../rules/wire-end-open.ts';
import { wireIdentifiedByColour } from '../rules/wire-identified-by-colour.ts';
import { wireMarkMissing } from '../rules/wire-mark-missing.ts';
import { wireMarkRepeated } from '../rules/wire-mark-repeated.ts';
import { wireThinnerThanCircuit } from '../rules/wire-thinner-than-circuit.ts';
import { wireUnidentified } from '../rules/wire-unidentified.ts';

/** Rules of contacts, wires, marks and wires found. */
export const WIRING_RULES: readonly Rule[] = [
  pinUsedTwice,
  wireEndOpen,
  transmitMeetsTransmit,
  receiveWithoutTransmit,
  levelsDiffer,
  powerMeetsGround,
  powerUnprotected,
  groundOpen,
  wireThinnerThanCircuit,
  wireMarkMissing,
  wireMarkRepeated,
  wireUnidentified,
  wireIdentifiedByColour,
  foundWireLive,
  shieldUnterminated,
  continuityNotTested,
  insulationLow,
  cableNearControls,
];
