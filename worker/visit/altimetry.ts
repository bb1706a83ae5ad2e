import * as m from '../text/generated/messages.ts';
import { choice, flag, list, number, part, person, timestamp } from './field.ts';

const altitude = (title: string, description: string, example: number) =>
  number(title, description, 'ft', example, { min: -1000, max: 50_000 });
const reading = (title: string, description: string, example: number) =>
  number(title, description, 'ft', example, { min: -2000, max: 60_000 });
const loss = (title: string, description: string, example: number) =>
  number(title, description, 'ft', example, { min: 0, max: 10_000 });
const setting = (title: string, description: string, example: number, { min = 800, max = 1100 } = {}) =>
  number(title, description, 'hPa', example, { min, max });

export const EncoderPoint = part('Encoder point', 'Encoder against altimeter at one level', {
  altimeterFt: number('Altimeter', 'Altimeter at 1013.25 hPa', 'ft', 5000, { min: -1000, max: 60_000 }),
  encoderFt: number('Encoder', 'Level reported', 'ft', 5000, { min: -1300, max: 127_000 }),
});

export const Encoder = part('Encoder', 'Altitude encoder against altimeter', {
  at: timestamp('At', 'When', '2026-11-05T09:45:00+01:00', m.altimetry_encoderComparison),
  by: person('By', 'Person who tested', 'jonas', m.altimetry_comparedEncoder),
  points: list('Points', 'Every level', EncoderPoint, { min: 1, max: 60 }),
});

export const ScalePoint = part('Scale point', 'Altimeter against the reference pressure', {
  trueFt: altitude('True', 'Altitude of the reference pressure', 5000),
  readFt: reading('Read', 'What the altimeter shows', 5010),
});

export const HysteresisPoint = part('Hysteresis point', 'The same pressure met rising and falling', {
  risingFt: reading('Rising', 'Reading at this pressure in the test of scale error', 6030),
  fallingFt: reading('Falling', 'Reading at this pressure on the way down', 6045),
});

export const Hysteresis = part('Hysteresis', 'Readings on the way down, after the maximum altitude', {
  halfway: HysteresisPoint.meta({
    title: 'At 50 %',
    description: 'At 50 % of the maximum altitude, held for 5 to 15 minutes',
  }),
  twoFifths: HysteresisPoint.meta({
    title: 'At 40 %',
    description: 'At 40 % of the maximum altitude, held for 1 to 10 minutes',
  }),
});

export const FrictionPoint = part('Friction point', 'What vibration does to the reading at one altitude', {
  altitudeFt: altitude('Altitude', 'Altitude in a climb of about 750 ft in a minute', 5000),
  changeFt: number('Change', 'Change of the reading after vibration', 'ft', 20, { min: -10_000, max: 10_000 }),
});

export const BarometricPoint = part('Barometric point', 'What turning the pressure scale does to the reading', {
  settingHpa: setting('Setting', 'Pressure set; 1 inch of mercury is 33.86389 hPa', 982.05, {
    min: 951.5,
    max: 1049.5,
  }),
  differenceFt: number(
    'Difference',
    'Reading less the reading at 1013.2 hPa (29.92 inches of mercury), in unchanged air pressure',
    'ft',
    -858,
    { min: -10_000, max: 10_000 },
  ),
});

export const BarometricScale = part('Barometric scale', 'Pressure scale of the altimeter', {
  fromHpa: setting('From', 'Lowest pressure that can be set', 945),
  toHpa: setting('To', 'Highest pressure that can be set', 1050),
  points: list('Points', 'Pressures set', BarometricPoint, { min: 1, max: 20 }),
});

export const AltimeterTest = part('Altimeter test', 'Figures of the altimeter test', {
  at: timestamp('At', 'When', '2026-11-05T09:10:00+01:00', m.altimetry_altimeterTest),
  by: person('By', 'Person who tested', 'jonas', m.altimetry_testedAltimeter),
  maximumFt: number('Maximum altitude', 'Altitude to which it was tested', 'ft', 12_000, { min: 0, max: 50_000 }),
  scale: list('Scale', 'Scale error', ScalePoint, { min: 1, max: 60 }),
  hysteresis: Hysteresis.optional(),
  afterEffectFt: loss('After-effect', 'Difference after the test', 10).optional(),
  friction: list('Friction', 'Friction at every altitude', FrictionPoint, { max: 20 }).optional(),
  caseLeakFt: loss('Case leak', 'Loss in one minute at 18,000 ft', 20).optional(),
  barometric: BarometricScale.optional(),
});

export const StaticSystem = part('Static system', 'Test of the static pressure system in the aircraft', {
  at: timestamp('At', 'When', '2026-11-05T08:50:00+01:00', m.altimetry_testStaticSystem),
  by: person('By', 'Person who tested', 'jonas', m.altimetry_testedStaticSystem),
  raisedFt: number('Raised', 'How far the altimeter was raised above the aerodrome', 'ft', 1000, {
    min: 0,
    max: 50_000,
  }),
  lossFt: loss('Loss', 'Loss of indicated altitude in one minute without pumping', 20),
  isClear: flag('Clear', 'No trapped moisture, no restriction', true).optional(),
  portHeater: choice('Port heater', 'Heater of the static port', [
    'none',
    'operative',
    'inoperative',
  ] as const).optional(),
  isUndeformed: flag(
    'Undeformed',
    'No alteration or deformation of the surface that changes the pressure at the port',
    true,
  ).optional(),
});
