import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';

/** Forms of a 24-bit address, and the data derived from it. */
export const AddressResult = z.object({
  hexadecimal: z.string(),
  octal: z.string(),
  binary: z.string(),
  state: orUndefined(z.string()).describe('State whose block holds the address'),
  isReserved: z.boolean(),
  /** Derived from the address, if a State publishes the rule. */
  registration: orUndefined(z.string()),
});
export type AddressResult = z.infer<typeof AddressResult>;

/** Figures of the tests that have limits. */
const FIGURES = [
  'scale-error',
  'hysteresis-50',
  'hysteresis-40',
  'after-effect',
  'friction',
  'case-leak',
  'barometric-scale',
  'raised-above-aerodrome',
  'loss-in-one-minute',
  'pitot-loss',
  'airspeed',
  'reply-frequency',
  'output-power',
  'sensitivity',
  'sensitivity-difference',
  'sidelobe-replies',
  'wanted-replies',
  'antenna-isolation',
  'torque',
  'heading-error',
  'vibration',
  'track-split',
] as const;
export type Figure = (typeof FIGURES)[number];

/** Reading and reference of a difference. */
export const Difference = z.object({ read: z.number(), against: z.number() });
export type Difference = z.infer<typeof Difference>;

/** A figure with its limits; a limit that does not exist is left out. */
export const LimitCheck = z.object({
  figure: z.enum(FIGURES),
  /** Altitude or pressure of the reading. */
  at: z.object({ value: z.number(), unit: z.string() }).exactOptional(),
  value: z.number(),
  unit: z.string(),
  least: z.number().exactOptional(),
  most: z.number().exactOptional(),
  isWithin: z.boolean(),
  /** Reading and reference, if the figure is a difference. */
  terms: Difference.exactOptional(),
});
export type LimitCheck = z.infer<typeof LimitCheck>;

const CHECKS = [
  'own-address-only',
  'altitude-agrees',
  'identity-agrees',
  'communication-formats',
  'all-call',
  'silent-to-mode-a-all-call',
  'squitter',
  'static-clear',
  'static-port-heater',
  'static-surface',
] as const;

/** A test item without a figure. */
export const Check = z.object({
  check: z.enum(CHECKS),
  paragraph: z.string().describe('Paragraph that asks for it'),
  outcome: z.enum(['passed', 'failed', 'not recorded']),
});
export type Check = z.infer<typeof Check>;

/** Required item that is not in the record: the altitudes or pressures at which it is missing, empty if all of it is. */
export const MissingItem = z.object({
  figure: z.enum(['scale-error', 'hysteresis', 'after-effect', 'friction', 'case-leak', 'barometric-scale']),
  at: z.array(z.number()),
  unit: z.string(),
});
export type MissingItem = z.infer<typeof MissingItem>;

/** Figures that the class of a transponder requires. */
export const TransponderOmission = z.enum(['sensitivity-by-mode', 'diversity', 'antenna-isolation']);
export type TransponderOmission = z.infer<typeof TransponderOmission>;

export const EncoderResult = z.object({
  altimeterFt: z.number(),
  encoderFt: z.number(),
  differenceFt: z.number(),
  isWithin: z.boolean(),
  /** Twelve pulses D1 to C4 for the altimeter’s level. */
  pulses: z.string(),
});
export type EncoderResult = z.infer<typeof EncoderResult>;

/** The test of one altimeter. */
export const AltimeterResult = z.object({
  figures: z.array(LimitCheck),
  omissions: z.array(MissingItem).describe('What the altimeter test leaves out'),
});
export type AltimeterResult = z.infer<typeof AltimeterResult>;

/** A static pressure system with its requirements. */
export const StaticSystemResult = z.object({ figures: z.array(LimitCheck), checks: z.array(Check) });
export type StaticSystemResult = z.infer<typeof StaticSystemResult>;

/** All tests of the surveillance and altimetry equipment. */
export const SurveillanceTests = z.object({
  transponder: z.array(LimitCheck),
  /** Checks of a Mode S transponder in addition to its figures. */
  modeS: z.array(Check),
  /** Figures of the transponder test that are not in the record. */
  transponderMissing: z.array(TransponderOmission),
  encoder: z.array(EncoderResult),
  altimeters: z.array(AltimeterResult).describe('In the order of the record'),
  staticSystems: z.array(StaticSystemResult).describe('In the order of the record'),
  pitotSystems: z
    .array(z.object({ figures: z.array(LimitCheck) }))
    .describe('Leak and airspeed indication, in the order of the record'),
});
export type SurveillanceTests = z.infer<typeof SurveillanceTests>;
