import { isSerialCoded } from '../../record/surveillance.ts';
import type { Visit } from '../../record/visit.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import { addressForms, isReserved, parseAddress } from './address.ts';
import { altimeterFigures, altimeterOmissions } from './altimeter.ts';
import { ENCODER_TOLERANCE_FT } from './altimeter-limits.ts';
import { altitudeCode } from './altitude-code.ts';
import { pitotFigures } from './pitot-system.ts';
import { stateOf } from './state-of.ts';
import { staticSystemResult } from './static-system.ts';
import type { AddressResult, EncoderResult, SurveillanceTests } from './surveillance-result.ts';
import { missingOfTransponder, modeSChecks } from './transponder-checks.ts';
import { transponderFigures } from './transponder-limits.ts';
import { usRegistration } from './us-registration.ts';

export type SurveillanceRecord = NonNullable<Visit['surveillance']>;

export interface DeviceResult {
  id: string;
  /** Undefined if not entered or not readable. */
  set: number | undefined;
  received: number | undefined;
}

export interface SurveillanceResult extends SurveillanceTests {
  /** Address from the documents; undefined if missing or not readable. */
  address: number | undefined;
  forms: AddressResult | undefined;
  devices: DeviceResult[];
}

/**
 * Returns addresses in every form, devices compared with the documents, and all tests with their limits.
 *
 * @source encoder: 14 CFR 43 Appendix E (c) and 91.217, read
 */
export function surveillanceResults(visit: Pick<Visit, 'aircraft'>, record: SurveillanceRecord): SurveillanceResult {
  const { address24 } = visit.aircraft;
  const { transponderTest, altimeters = [], staticSystems = [], pitotSystems = [] } = record;
  const address = address24 === undefined ? undefined : parseAddress(address24);
  return {
    address,
    forms: address === undefined ? undefined : addressResult(address),
    devices: record.devices.map((device) => {
      const { id, addressSet, readBack } = device;
      if (isSerialCoded(device)) return { id, set: undefined, received: undefined };
      return {
        id,
        set: addressSet === undefined ? undefined : parseAddress(addressSet),
        received: readBack && parseAddress(readBack.address),
      };
    }),
    transponder: transponderTest ? transponderFigures(transponderTest) : [],
    modeS: transponderTest ? modeSChecks(transponderTest) : [],
    transponderMissing: transponderTest ? missingOfTransponder(transponderTest) : [],
    encoder: (record.encoder?.points ?? []).map(encoderResult),
    altimeters: altimeters.map((test) => ({ figures: altimeterFigures(test), omissions: altimeterOmissions(test) })),
    staticSystems: staticSystems.map(staticSystemResult),
    pitotSystems: pitotSystems.map((system) => ({ figures: pitotFigures(system) })),
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
