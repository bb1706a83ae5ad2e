import { readVisit, SETTINGS } from '../../tests/calc/read-visit.ts';
import { fuelBurn } from '../../tests/published/fuel-burn.ts';
import { burnPathOf } from '../../worker/calc/loading/burn-path.ts';
import { checkLoading } from '../../worker/calc/loading/check.ts';
import { envelopeOf } from '../../worker/calc/loading/envelope.ts';
import { minimumSoloKg } from '../../worker/calc/loading/solo.ts';
import { judgeOf } from '../../worker/calc/loading/verdict.ts';
import { atArm } from '../../worker/calc/mass-moment.ts';
import { inputOf } from './case-of.ts';
import type { Formula, Topic } from './formula.ts';
import { carried } from './payload.ts';
import { said, sum } from './steps.ts';
import { demoWeighing } from './weighing.ts';

const { aircraft } = readVisit('nose-wheel-full');
const plain = readVisit('computed-only').aircraft;

const AFTER = 'x_2 = \\frac{m \\cdot x_1 - f \\cdot x_f}{m - f}';
const SHIFT = '\\Delta x = x_2 - x_1';

const burn: Formula = {
  id: 'burn-path',
  title: 'Burning of fuel',
  tex: [AFTER, SHIFT],
  symbols: [
    ['x_1', 'arm of the centre of gravity before', 'mm'],
    ['x_2', 'arm of the centre of gravity after', 'mm'],
    ['\\Delta x', 'shift', 'mm'],
    ['m', 'mass before', 'kg'],
    ['f', 'fuel burnt', 'kg'],
    ['x_f', 'its arm', 'mm'],
  ],
  by: [burnPathOf],
  holds:
    'Tanks burn in the order of the record, those with the same number together in proportion to what they hold, each down to its unusable fuel. With a table of arms the way is followed in four steps.',
  example() {
    const input = inputOf<Parameters<typeof fuelBurn>[0]>('WB-24');
    const { shift = Number.NaN } = fuelBurn(input);
    const { loaded, fuel } = input;
    return {
      case: 'WB-24',
      given: { m: [loaded.mass, 'lb'], x_1: [loaded.arm, 'in'], f: [fuel.mass, 'lb'], x_f: [fuel.arm, 'in'] },
      steps: [sum(AFTER, loaded.arm + shift, 'in'), sum(SHIFT, shift, 'in', 'shift')],
    };
  },
};

const SHARE = 's = \\frac{b}{m_1 - m_2}';
const LANDING = 'M_b = M_1 + s \\cdot (M_2 - M_1)';

const landing: Formula = {
  id: 'landing',
  title: 'Where a planned burn ends',
  tex: [SHARE, LANDING],
  symbols: [
    ['s', 'share of a piece of the way', ''],
    ['b', 'fuel burnt on that piece', 'kg'],
    ['m_1', 'mass at its beginning', 'kg'],
    ['m_2', 'mass at its end', 'kg'],
    ['M_1', 'moment at its beginning', 'kg·mm'],
    ['M_2', 'moment at its end', 'kg·mm'],
    ['M_b', 'moment at the landing', 'kg·mm'],
  ],
  by: [checkLoading],
  holds:
    'Each piece of the way is straight in mass and moment. There is no landing where more is to be burnt than is aboard.',
  example() {
    const load = { 'left-seat': 80, tank: 24 };
    const { path, landing: there } = checkLoading(plain, atArm(277, 320), { load, burnKg: 9 });
    const [start, end] = [path[0], path.at(-1)];
    return {
      given: {
        b: [9, 'kg'],
        m_1: [start?.massKg ?? Number.NaN, 'kg'],
        m_2: [end?.massKg ?? Number.NaN, 'kg'],
        M_1: [start?.momentKgMm ?? Number.NaN, 'kg·mm'],
        M_2: [end?.momentKgMm ?? Number.NaN, 'kg·mm'],
      },
      steps: [sum(SHARE, 9 / 24), sum(LANDING, there?.momentKgMm ?? Number.NaN, 'kg·mm')],
    };
  },
};

const over: Formula = {
  id: 'over-a-limit',
  title: 'By how much a loading is over a limit',
  tex: ['o = m - m_{\\max}', 'o_z = m - f - m_z'],
  symbols: [
    ['o', 'mass over the maximum mass', 'kg'],
    ['o_z', 'mass over the maximum zero-fuel mass', 'kg'],
    ['m', 'mass of the loading', 'kg'],
    ['f', 'usable fuel aboard', 'kg'],
    ['m_{\\max}', 'maximum mass', 'kg'],
    ['m_z', 'maximum zero-fuel mass', 'kg'],
  ],
  by: [judgeOf, checkLoading],
  holds:
    'Looked at in this order, then the maximum of every station and group, then the envelope from take-off until the fuel is gone. What brings a loading inside is found by steps of half a kilogram, of one station alone.',
  example() {
    const load = { 'left-seat': 100, 'right-seat': 100, baggage: 20, 'wing-tanks': 56 };
    const envelope = aircraft.envelope && envelopeOf(aircraft.envelope);
    const check = checkLoading(aircraft, demoWeighing().result.empty, { load, burnKg: 0, envelope });
    const verdict = judgeOf(aircraft, envelope)(check.takeOff);
    const overKg = 'overKg' in verdict ? verdict.overKg : Number.NaN;
    const cures = check.cures.map(({ station, byKg }) => `${station} ${String(byKg).replace('-', '−')} kg`);
    return {
      given: { m: [check.takeOff.massKg, 'kg'], 'm_{\\max}': [aircraft.maximumMassKg, 'kg'] },
      steps: [sum('o = m - m_{\\max}', overKg, 'kg'), said(`Any one of these brings it inside: ${cures.join(', ')}.`)],
    };
  },
};

const SOLO = 'p = \\frac{m_0 \\cdot (x_f - x_0)}{x_p - x_f}';

const solo: Formula = {
  id: 'least-solo-pilot',
  title: 'Least pilot alone',
  tex: [SOLO],
  symbols: [
    ['p', 'least mass of a pilot alone', 'kg'],
    ['m_0', 'empty mass', 'kg'],
    ['x_0', 'arm of the empty centre of gravity', 'mm'],
    ['x_p', 'arm of the seat', 'mm'],
    ['x_f', 'forward limit', 'mm'],
  ],
  by: [minimumSoloKg],
  holds:
    'The formula holds where the forward limit is upright and the tanks are worst when empty. The code searches by halving instead, with every limit and every content of the tanks, from 30 kg on.',
  example() {
    const corners = [
      { armMm: 1680, massKg: 330 },
      { armMm: 1680, massKg: 600 },
      { armMm: 1850, massKg: 600 },
      { armMm: 1850, massKg: 330 },
    ];
    const envelope = envelopeOf(corners);
    const options = { empty: atArm(326, 1650), leastPilotKg: SETTINGS.leastPilotKg };
    const result = envelope && minimumSoloKg({ ...aircraft, envelope: corners }, options, envelope);
    return {
      given: { m_0: [326, 'kg'], x_0: [1650, 'mm'], x_p: [1905, 'mm'], x_f: [1680, 'mm'] },
      steps: [sum(SOLO, result ?? Number.NaN, 'kg')],
    };
  },
};

export const flight: Topic = {
  id: 'flight',
  title: 'Flight and payload',
  formulas: [burn, landing, over, solo, ...carried],
};
