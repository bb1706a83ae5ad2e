import { envelopeIn } from '../../worker/core/calc/loading/aircraft-envelope.ts';
import { checkLoading } from '../../worker/core/calc/loading/check.ts';
import { envelopeOf } from '../../worker/core/calc/loading/envelope.ts';
import { minimumSoloKg } from '../../worker/core/calc/loading/solo.ts';
import { judgeOf } from '../../worker/core/calc/loading/verdict.ts';
import { atArm } from '../../worker/core/calc/mass/mass-moment.ts';
import { SETTINGS } from '../published/read-visit.ts';
import { DEMO, demoWeighing } from './demo.ts';
import type { Formula } from './formula.ts';
import { said, sum } from './steps.ts';

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
    'Looked at in this order, then the maximum landing mass of the aircraft without fuel, the maximum of every station and group, whether a pilot is aboard and not too light, the envelope from take-off until the fuel is gone, whether usable fuel is aboard and the planned burn leaves some of it, and the landing mass where the planned burn ends. What brings a loading inside is found by steps of half a kilogram, of one station alone.',
  example() {
    const load = { 'left-seat': 100, 'right-seat': 100, baggage: 20, 'wing-tanks': 56 };
    const envelope = envelopeIn(DEMO.aircraft);
    const check = checkLoading(DEMO.aircraft, demoWeighing().result.empty, { load, burnKg: 0, envelope });
    const verdict = judgeOf(DEMO.aircraft, { envelope })(check.takeOff);
    const overKg = 'overKg' in verdict ? verdict.overKg : Number.NaN;
    const cures = check.cures.map(({ station, byKg }) => `${station} ${String(byKg).replace('-', '−')} kg`);
    return {
      given: { m: [check.takeOff.massKg, 'kg'], 'm_{\\max}': [DEMO.aircraft.maximumMassKg, 'kg'] },
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
    const result = envelope && minimumSoloKg({ ...DEMO.aircraft, envelope: corners }, options, envelope);
    return {
      given: { m_0: [326, 'kg'], x_0: [1650, 'mm'], x_p: [1905, 'mm'], x_f: [1680, 'mm'] },
      steps: [sum(SOLO, result ?? Number.NaN, 'kg')],
    };
  },
};

export const limiting: readonly Formula[] = [over, solo];
