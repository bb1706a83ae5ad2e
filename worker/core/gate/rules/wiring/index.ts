import type { Rule } from '../../rule.ts';
import { cableNearControls } from './cable-near-controls.ts';
import { continuityNotTested } from './continuity-not-tested.ts';
import { foundWireIncomplete } from './found-wire-incomplete.ts';
import { foundWireLive } from './found-wire-live.ts';
import { groundOpen } from './ground-open.ts';
import { insulationLow } from './insulation-low.ts';
import { insulationNotMeasured } from './insulation-not-measured.ts';
import { levelsDiffer } from './levels-differ.ts';
import { pinUseDiffers } from './pin-use-differs.ts';
import { pinUsedTwice } from './pin-used-twice.ts';
import { powerMeetsGround } from './power-meets-ground.ts';
import { powerUnprotected } from './power-unprotected.ts';
import { receiveWithoutTransmit } from './receive-without-transmit.ts';
import { shieldUnterminated } from './shield-unterminated.ts';
import { supplyCircuitDiffers } from './supply-circuit-differs.ts';
import { transmitMeetsTransmit } from './transmit-meets-transmit.ts';
import { wireEndOpen } from './wire-end-open.ts';
import { wireIdentifiedByColour } from './wire-identified-by-colour.ts';
import { wireMarkMissing } from './wire-mark-missing.ts';
import { wireMarkRepeated } from './wire-mark-repeated.ts';
import { wireThinnerThanCircuit } from './wire-thinner-than-circuit.ts';
import { wireUnidentified } from './wire-unidentified.ts';
import { wiringTestOlder } from './wiring-test-older.ts';

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
  supplyCircuitDiffers,
  insulationNotMeasured,
  foundWireIncomplete,
  pinUseDiffers,
  wiringTestOlder,
];
