import { addressForms, isReserved, parseAddress } from '../../worker/core/calc/surveillance/address.ts';
import { altimeterFigures } from '../../worker/core/calc/surveillance/altimeter.ts';
import {
  barometricDifferenceFt,
  frictionToleranceFt,
  scaleToleranceFt,
} from '../../worker/core/calc/surveillance/altimeter-limits.ts';
import { altitudeCode, codedAltitudeFt } from '../../worker/core/calc/surveillance/altitude-code.ts';
import { surveillanceResults } from '../../worker/core/calc/surveillance/results.ts';
import { stateOf } from '../../worker/core/calc/surveillance/state-of.ts';
import { staticSystemResult } from '../../worker/core/calc/surveillance/static-system.ts';
import { modeSChecks, type TransponderTest } from '../../worker/core/calc/surveillance/transponder-checks.ts';
import { type TransponderFigures, transponderFigures } from '../../worker/core/calc/surveillance/transponder-limits.ts';
import { usRegistration } from '../../worker/core/calc/surveillance/us-registration.ts';
import { readVisit } from './read-visit.ts';

const yes = (holds: boolean): number => (holds ? 1 : 0);

function address(text: string): number {
  const found = parseAddress(text);
  if (found === undefined) throw new Error(`the case has an address, not ${text}`);
  return found;
}

/** Twelve pulses D1 D2 D4 A1 A2 A4 B1 B2 B4 C1 C2 C4 as the four octal digits A B C D. */
function octalOf(pulses: number): number {
  const digit = (shift: number): number => {
    const [first, second, fourth] = [pulses >> (shift + 2), pulses >> (shift + 1), pulses >> shift].map(
      (bit) => bit & 1,
    );
    return (first ?? 0) + 2 * (second ?? 0) + 4 * (fourth ?? 0);
  };
  const [D, A, B, C] = [9, 6, 3, 0].map(digit);
  return Number(`${A}${B}${C}${D}`);
}

/** A transponder on the good side of every limit, so that one figure decides. */
const GOOD = {
  replyFrequencyMhz: 1090,
  outputDbw: 22,
  sensitivityDbm: -73,
  sidelobeRepliesPercent: 0,
  wantedRepliesPercent: 100,
  testSet: {},
};

/** A test of which only the class and the checks matter. */
const TEST: TransponderTest = {
  ...GOOD,
  at: '2026-11-05T09:30:00Z',
  by: 'jonas',
  class: 'S-1B',
  testSet: { serial: 'S', calibrationDueOn: '2027-03-31' },
};

const INCH_OF_MERCURY_HPA = 33.863_89;

interface AltimetryInput {
  encoderDifferenceFt?: number;
  caseLeakFt?: number;
  afterEffectFt?: number;
  /** Falling less rising at 50 % and at 40 %. */
  hysteresisFt?: [number, number];
  friction?: [altitudeFt: number, changeFt: number][];
  barometric?: [settingInHg: number, differenceFt: number][];
}

export const SURVEILLANCE_TOPICS = {
  /** The States on both sides of a boundary between blocks; 0 where our table gives another or none. */
  'state-boundary': ({ below, belowState, above, aboveState }: Record<string, string>) => ({
    below: yes(stateOf(address(below ?? '')) === belowState),
    above: yes(stateOf(address(above ?? '')) === aboveState),
  }),

  'reserved-address': ({ address: text }: { address: string }) => ({ isReserved: yes(isReserved(address(text))) }),

  'us-registration': ({ address: text, registration }: { address: string; registration: string }) => ({
    isRegistration: yes(usRegistration(address(text)) === registration),
    octal: Number(addressForms(address(text)).octal),
  }),

  /** Octal digits as printed, to the number that the hexadecimal digits make. */
  'octal-address': ({ octal }: { octal: string }) => ({ address: address(octal) }),

  /** Which of two neighbours has a United States registration, and how many there are up to the last. */
  'us-range': ({ first, last, next }: Record<'first' | 'last' | 'next', string>) => ({
    last: yes(usRegistration(address(last)) !== undefined),
    next: yes(usRegistration(address(next)) !== undefined),
    count: address(last) - address(first) + 1,
  }),

  'altitude-code': ({ altitudeFt }: { altitudeFt: number }) => {
    const pulses = altitudeCode(altitudeFt) ?? Number.NaN;
    return {
      pulses: Number(pulses.toString(2)),
      octal: octalOf(pulses),
      decodedFt: codedAltitudeFt(pulses) ?? Number.NaN,
    };
  },

  /** Tolerance of the scale error at every altitude of a table. */
  'scale-tolerance': ({ altitudesFt }: { altitudesFt: number[] }) =>
    Object.fromEntries(altitudesFt.map((altitudeFt) => [`at${altitudeFt}`, scaleToleranceFt(altitudeFt)])),

  /** Whether everything of a transponder test with one unusual figure is within limits. */
  transponder: (input: Partial<TransponderFigures> & Pick<TransponderFigures, 'class'>) => ({
    isWithin: yes(transponderFigures({ ...GOOD, ...input }).every(({ isWithin }) => isWithin)),
  }),

  'friction-tolerance': ({ altitudesFt }: { altitudesFt: number[] }) =>
    Object.fromEntries(altitudesFt.map((altitudeFt) => [`at${altitudeFt}`, frictionToleranceFt(altitudeFt)])),

  'barometric-difference': ({ settingsInHg }: { settingsInHg: number[] }) =>
    Object.fromEntries(
      settingsInHg.map((setting) => [`at${setting}`, barometricDifferenceFt(setting * INCH_OF_MERCURY_HPA)]),
    ),

  /** How many checks of a Mode S transponder are passed, failed and not recorded. */
  'mode-s-checks': (input: Partial<TransponderTest>) => {
    const outcomes = modeSChecks({ ...TEST, ...input }).map(({ outcome }) => outcome);
    const count = (of: string): number => outcomes.filter((outcome) => outcome === of).length;
    return { passed: count('passed'), failed: count('failed'), unknown: count('not recorded') };
  },

  'static-system': ({ raisedFt, lossFt }: { raisedFt: number; lossFt: number }) => {
    const { figures } = staticSystemResult({ at: '2026-11-05T09:05:00Z', by: 'jonas', raisedFt, lossFt });
    return { isWithin: yes(figures.every(({ isWithin }) => isWithin)) };
  },

  /** Whether encoder and altimeter are within limits. */
  altimetry: ({ encoderDifferenceFt = 0, hysteresisFt = [0, 0], ...input }: AltimetryInput) => {
    const visit = readVisit('nose-wheel-full');
    const { surveillance } = visit;
    if (!surveillance?.encoder || !surveillance.altimeters?.[0]) throw new Error('the full visit has altimetry');
    const points = [{ altimeterFt: 5000, encoderFt: 5000 + encoderDifferenceFt }];
    const encoder = { ...surveillance.encoder, points };
    const figures = altimeterFigures({
      ...surveillance.altimeters[0],
      caseLeakFt: input.caseLeakFt ?? 0,
      afterEffectFt: input.afterEffectFt ?? 0,
      hysteresis: {
        halfway: { risingFt: 6000, fallingFt: 6000 + hysteresisFt[0] },
        twoFifths: { risingFt: 4800, fallingFt: 4800 + hysteresisFt[1] },
      },
      friction: (input.friction ?? []).map(([altitudeFt, changeFt]) => ({ altitudeFt, changeFt })),
      barometric: {
        fromHpa: 945,
        toHpa: 1050,
        points: (input.barometric ?? []).map(([settingInHg, differenceFt]) => ({
          settingHpa: settingInHg * INCH_OF_MERCURY_HPA,
          differenceFt,
        })),
      },
    });
    const compared = surveillanceResults(visit, { ...surveillance, encoder }).encoder;
    return { isWithin: yes([...compared, ...figures].every(({ isWithin }) => isWithin)) };
  },
};
