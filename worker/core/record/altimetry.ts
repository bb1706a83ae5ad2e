import { type FieldText, fieldText } from '../text/field-texts.ts';
import * as m from '../text/generated/messages.ts';
import { choice, flag, line, list, number, part, person, reference, timestamp } from './field.ts';

const altitude = (text: FieldText, example: number) => number(text, 'ft', example, { min: -1000, max: 50_000 });
const reading = (text: FieldText, example: number) => number(text, 'ft', example, { min: -2000, max: 60_000 });
const loss = (text: FieldText, example: number) => number(text, 'ft', example, { min: 0, max: 10_000 });
const setting = (text: FieldText, example: number, { min = 800, max = 1100 } = {}) =>
  number(text, 'hPa', example, { min, max });

/** Which one was tested, if the aircraft has several: a name, and the line of the equipment list. */
export const which = {
  name: line('which_name', 'Left panel', 60).optional(),
  item: reference('equipment-item', 'which_item', 'E05').optional(),
};

export const EncoderPoint = part('encoderPoint', {
  altimeterFt: number('encoderPoint_altimeterFt', 'ft', 5000, { min: -1000, max: 60_000 }),
  encoderFt: number('encoderPoint_encoderFt', 'ft', 5000, { min: -1300, max: 127_000 }),
});

export const Encoder = part('encoder', {
  at: timestamp('encoder_at', '2026-11-05T09:45:00+01:00', m.altimetry_encoderComparison),
  by: person('encoder_by', 'jonas', m.altimetry_comparedEncoder),
  points: list('encoder_points', EncoderPoint, { min: 1, max: 60 }),
});

export const ScalePoint = part('scalePoint', {
  trueFt: altitude('scalePoint_trueFt', 5000),
  readFt: reading('scalePoint_readFt', 5010),
});

export const HysteresisPoint = part('hysteresisPoint', {
  risingFt: reading('hysteresisPoint_risingFt', 6030),
  fallingFt: reading('hysteresisPoint_fallingFt', 6045),
});

export const Hysteresis = part('hysteresis', {
  halfway: HysteresisPoint.meta({
    ...fieldText('hysteresis_halfway'),
  }),
  twoFifths: HysteresisPoint.meta({
    ...fieldText('hysteresis_twoFifths'),
  }),
});

export const FrictionPoint = part('frictionPoint', {
  altitudeFt: altitude('frictionPoint_altitudeFt', 5000),
  changeFt: number('frictionPoint_changeFt', 'ft', 20, { min: -10_000, max: 10_000 }),
});

export const BarometricPoint = part('barometricPoint', {
  settingHpa: setting('barometricPoint_settingHpa', 982.05, {
    min: 951.5,
    max: 1049.5,
  }),
  differenceFt: number('barometricPoint_differenceFt', 'ft', -858, { min: -10_000, max: 10_000 }),
});

export const BarometricScale = part('barometricScale', {
  fromHpa: setting('barometricScale_fromHpa', 945),
  toHpa: setting('barometricScale_toHpa', 1050),
  points: list('barometricScale_points', BarometricPoint, { min: 1, max: 20 }),
});

export const AltimeterTest = part('altimeterTest', {
  ...which,
  at: timestamp('altimeterTest_at', '2026-11-05T09:10:00+01:00', m.altimetry_altimeterTest),
  by: person('altimeterTest_by', 'jonas', m.altimetry_testedAltimeter),
  maximumFt: number('altimeterTest_maximumFt', 'ft', 12_000, { min: 0, max: 50_000 }),
  scale: list('altimeterTest_scale', ScalePoint, { min: 1, max: 60 }),
  hysteresis: Hysteresis.optional(),
  afterEffectFt: loss('altimeterTest_afterEffectFt', 10).optional(),
  friction: list('altimeterTest_friction', FrictionPoint, { max: 20 }).optional(),
  caseLeakFt: loss('altimeterTest_caseLeakFt', 20).optional(),
  barometric: BarometricScale.optional(),
});

export const StaticSystem = part('staticSystem', {
  ...which,
  at: timestamp('staticSystem_at', '2026-11-05T08:50:00+01:00', m.altimetry_testStaticSystem),
  by: person('staticSystem_by', 'jonas', m.altimetry_testedStaticSystem),
  raisedFt: number('staticSystem_raisedFt', 'ft', 1000, {
    min: 0,
    max: 50_000,
  }),
  lossFt: loss('staticSystem_lossFt', 20),
  isClear: flag('staticSystem_isClear', true).optional(),
  portHeater: choice('staticSystem_portHeater', ['none', 'operative', 'inoperative'] as const).optional(),
  isUndeformed: flag('staticSystem_isUndeformed', true).optional(),
});

const AIRSPEED_UNITS = ['kt', 'km/h', 'mph'] as const;

const airspeed = (text: FieldText, example: number) => number(text, 'pitotSystem.unit', example, { min: 0, max: 1000 });

export const PitotLeak = part('pitotLeak', {
  appliedSpeed: airspeed('pitotLeak_appliedSpeed', 120),
  lossSpeed: airspeed('pitotLeak_lossSpeed', 2),
  seconds: number('pitotLeak_seconds', 's', 60, { min: 1, max: 3600 }),
  limitSpeed: airspeed('measured_limit', 10),
});

export const AirspeedPoint = part('airspeedPoint', {
  setSpeed: airspeed('airspeedPoint_setSpeed', 60),
  readSpeed: airspeed('airspeedPoint_readSpeed', 61),
  limitSpeed: airspeed('measured_limit', 3),
});

export const PitotSystem = part('pitotSystem', {
  ...which,
  at: timestamp('measured_at', '2026-11-05T08:55:00+01:00', m.measurements_measurement),
  by: person('measured_by', 'jonas', m.measurements_measured),
  unit: choice('measured_unit', AIRSPEED_UNITS),
  leak: PitotLeak.optional(),
  points: list('airspeedPoint', AirspeedPoint, { max: 40 }).optional(),
});
