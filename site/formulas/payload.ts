import { crewFuelTable } from '../../worker/core/calc/loading/crew-fuel-table.ts';
import { loadLimitsOf } from '../../worker/core/calc/loading/load-limits.ts';
import { loadingSheet } from '../../worker/core/calc/loading/loading-sheet.ts';
import { payloadAgainst } from '../../worker/core/calc/loading/payload.ts';
import { judgeOf } from '../../worker/core/calc/loading/verdict.ts';
import { SETTINGS } from '../published/read-visit.ts';
import { TOPICS } from '../published/topics.ts';
import { inputOf } from './case-of.ts';
import { DEMO, demoWeighing } from './demo.ts';
import type { Formula } from './formula.ts';
import { sum } from './steps.ts';

const VOLUME = 'V = s \\cdot (V_c - V_0)';
const BAGGAGE = 'b = \\min(b_{\\max}, m_{\\max} - m_0 - n \\cdot p - V \\cdot \\rho)';

const crewAndFuel: Formula = {
  id: 'crew-and-fuel',
  title: 'Baggage for a crew and fuel',
  tex: [VOLUME, BAGGAGE],
  symbols: [
    ['V', 'usable fuel of a column', 'l'],
    ['s', 'share of the tanks: a quarter, a half, three quarters, all', ''],
    ['V_c', 'capacity of the tanks', 'l'],
    ['V_0', 'unusable volume', 'l'],
    ['b', 'baggage that may still be carried', 'kg'],
    ['b_{\\max}', 'what the baggage places take', 'kg'],
    ['m_{\\max}', 'maximum mass', 'kg'],
    ['m_0', 'empty mass', 'kg'],
    ['n', 'persons aboard', ''],
    ['p', 'mass of each', 'kg'],
    ['\\rho', 'density of the fuel', 'kg/l'],
  ],
  by: [crewFuelTable],
  holds:
    'Where this loading stays within every limit until the fuel is gone. Where it does not, the most baggage that does is found by halving, and every lesser amount is inside too.',
  example() {
    const { empty } = demoWeighing().result;
    const { usableL, rows } = crewFuelTable(DEMO.aircraft, empty, [100], judgeOf(DEMO.aircraft));
    const cell = rows.find(({ aboard }) => aboard === 'two')?.cells.at(-1);
    return {
      given: {
        s: [1, ''],
        V_c: [80, 'l'],
        V_0: [2, 'l'],
        'b_{\\max}': [25, 'kg'],
        'm_{\\max}': [DEMO.aircraft.maximumMassKg, 'kg'],
        m_0: [empty.massKg, 'kg'],
        n: [2, ''],
        p: [100, 'kg'],
        '\\rho': [0.72, 'kg/l'],
      },
      steps: [
        sum(VOLUME, usableL.at(-1) ?? Number.NaN, 'l'),
        sum(BAGGAGE, cell && 'baggageKg' in cell ? cell.baggageKg : Number.NaN, 'kg'),
      ],
    };
  },
};

const PAYLOAD = 'P = \\min(m_{\\max} - F, m_z) - m_0';
const FILLED = 's = \\min(1, \\frac{m_{\\max} - d}{F})';

const fullFuel: Formula = {
  id: 'payload-with-full-tanks',
  title: 'Payload with full tanks, and fuel of a standard crew',
  tex: [PAYLOAD, FILLED],
  symbols: [
    ['P', 'payload with full tanks', 'kg'],
    ['m_{\\max}', 'maximum mass', 'kg'],
    ['m_z', 'maximum zero-fuel mass', 'kg'],
    ['m_0', 'empty mass', 'kg'],
    ['F', 'usable fuel of full tanks', 'kg'],
    ['s', 'share to which tanks are filled with the crew aboard; not below 0', ''],
    ['d', 'mass with the crew and without fuel', 'kg'],
  ],
  by: [loadLimitsOf, loadingSheet],
  holds:
    'The payload is no more than the greatest mass of the envelope and the maximum landing mass, both less the fuel, and what seats and baggage places take together allow either. So the aircraft may land at once; what may take off beyond, where fuel is burnt first, is stated beside. A standard person has the mass that the regime states, or the maximum of the seat where that is less.',
  example() {
    const sheet = loadingSheet(DEMO, demoWeighing().result.empty, SETTINGS);
    const crew = sheet.loadings.find(({ kind }) => kind === 'two-standard-persons');
    const [full, dry] = [crew?.path[0], crew?.path.at(-1)];
    return {
      given: {
        'm_{\\max}': [DEMO.aircraft.maximumMassKg, 'kg'],
        m_z: [DEMO.aircraft.maximumZeroFuelMassKg ?? Number.NaN, 'kg'],
        m_0: [demoWeighing().result.empty.massKg, 'kg'],
        F: [sheet.limits.fullFuelKg, 'kg'],
        d: [dry?.massKg ?? Number.NaN, 'kg'],
      },
      steps: [
        sum(PAYLOAD, sheet.limits.fullTanksPayload.kg, 'kg'),
        sum(FILLED, (full?.load['wing-tanks'] ?? Number.NaN) / sheet.limits.fullFuelKg),
      ],
    };
  },
};

const SPARE = 'P = m_{\\max} - m_0 - n \\cdot p - q \\cdot t \\cdot \\rho';

const required: Formula = {
  id: 'payload-required',
  title: 'Payload that a regime asks for',
  tex: [SPARE],
  symbols: [
    ['P', 'what is left; negative where the rule is not met', 'kg'],
    ['m_{\\max}', 'maximum mass', 'kg'],
    ['m_0', 'empty mass', 'kg'],
    ['n', 'seats', ''],
    ['p', 'mass that counts for each seat', 'kg'],
    ['q', 'fuel flow', 'l/h'],
    ['t', 'time that fuel must last', 'h'],
    ['\\rho', 'density of the fuel', 'kg/l'],
  ],
  by: [payloadAgainst],
  holds: 'Where the regime has such a rule and the record gives the fuel flow of the engine.',
  example() {
    const input = inputOf<Record<string, number>>('UL-09');
    const { spareKg = Number.NaN } = TOPICS.payload?.(input as never) ?? {};
    const of = (name: string): number => input[name] ?? Number.NaN;
    return {
      case: 'UL-09',
      given: {
        'm_{\\max}': [of('maximumMassKg'), 'kg'],
        m_0: [of('emptyMassKg'), 'kg'],
        n: [of('seats'), ''],
        p: [of('perSeatKg'), 'kg'],
        q: [of('fuelFlowLPerH'), 'l/h'],
        t: [of('hours'), 'h'],
        '\\rho': [of('densityKgPerL'), 'kg/l'],
      },
      steps: [sum(SPARE, spareKg, 'kg', 'spareKg')],
    };
  },
};

export const carried: readonly Formula[] = [crewAndFuel, fullFuel, required];
