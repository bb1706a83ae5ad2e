import type { Visit } from '../../visit/visit.ts';
import { isAtMost } from '../limit-met.ts';
import { type AddressForms, addressForms, isReserved, parseAddress } from './address.ts';
import { altimeterFigures, altimeterOmissions, type Omission } from './altimeter.ts';
import { ENCODER_TOLERANCE_FT } from './altimeter-limits.ts';
import { altitudeCode } from './altitude-code.ts';
import type { Check } from './check.ts';
import type { Limited } from './limited.ts';
import { stateOf } from './state-blocks.ts';
import { type StaticSystemResult, staticSystemResult } from './static-system.ts';
import { modeSChecks, transponderOmissions } from './transponder-checks.ts';
import { transponderFigures } from './transponder-limits.ts';
import { usRegistration } from './us-registration.ts';

export type SurveillanceRecord = NonNullable<Visit['surveillance']>;

export interface AddressResult extends AddressForms {
  state: string | undefined;
  isReserved: boolean;
  /** Registration that follows from the address, where a State publishes the rule. */
  registration: string | undefined;
}

export interface DeviceResult {
  id: string;
  /** Undefined when nothing was entered or it cannot be read. */
  set: number | undefined;
  received: number | undefined;
}

export interface EncoderResult {
  altimeterFt: number;
  encoderFt: number;
  differenceFt: number;
  isWithin: boolean;
  /** Twelve pulses D1 to C4 that belong to the altimeter's level. */
  pulses: string;
}

export interface SurveillanceResult {
  /** The address of the papers; undefined when there is none or it cannot be read. */
  address: number | undefined;
  forms: AddressResult | undefined;
  devices: DeviceResult[];
  transponder: Limited[];
  /** What a Mode S transponder has to show besides its figures. */
  modeS: Check[];
  /** Figures of the transponder test that are not in the record. */
  transponderOmissions: string[];
  encoder: EncoderResult[];
  altimeter: Limited[];
  /** What the altimeter test leaves out. */
  altimeterOmissions: Omission[];
  staticSystem: StaticSystemResult | undefined;
}

/**
 * Addresses in every form, devices against the papers, and all tests against their limits.
 *
 * @source encoder: 14 CFR 43 Appendix E (c) and 91.217, read
 */
export function surveillanceResults(visit: Visit, record: SurveillanceRecord): SurveillanceResult {
  const { address24 } = visit.aircraft;
  const { transponderTest, altimeter, staticSystem } = record;
  const address = address24 === undefined ? undefined : parseAddress(address24);
  return {
    address,
    forms: address === undefined ? undefined : addressResult(address),
    devices: record.devices.map(({ id, addressSet, readBack }) => ({
      id,
      set: addressSet === undefined ? undefined : parseAddress(addressSet),
      received: readBack && parseAddress(readBack.address),
    })),
    transponder: transponderTest ? transponderFigures(transponderTest) : [],
    modeS: transponderTest ? modeSChecks(transponderTest) : [],
    transponderOmissions: transponderTest ? transponderOmissions(transponderTest) : [],
    encoder: (record.encoder?.points ?? []).map(encoderResult),
    altimeter: altimeter ? altimeterFigures(altimeter) : [],
    altimeterOmissions: altimeter ? altimeterOmissions(altimeter) : [],
    staticSystem: staticSystem && staticSystemResult(staticSystem),
  };
}

function addressResult(address: number): AddressResult {
  return {
    ...addressForms(address),
    state: stateOf(address),
    isReserved: isReserved(address),
    registration: usRegistration(address),
  };
}

function encoderResult({ altimeterFt, encoderFt }: { altimeterFt: number; encoderFt: number }): EncoderResult {
  const differenceFt = encoderFt - altimeterFt;
  return {
    altimeterFt,
    encoderFt,
    differenceFt,
    isWithin: isAtMost(Math.abs(differenceFt), ENCODER_TOLERANCE_FT),
    pulses: altitudeCode(altimeterFt)?.toString(2).padStart(12, '0') ?? '',
  };
}
