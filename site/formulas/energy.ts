import { energyEndurance, usableEnergy } from '../../worker/core/calc/energy/energy-store.ts';
import type { Formula, Topic } from './formula.ts';
import { sum } from './steps.ts';

const USABLE = 'E = E_n \\cdot h \\cdot (s_0 - s_1) \\cdot k';
const U_USABLE =
  'u_E = E \\cdot \\sqrt{\\left( \\frac{u_n}{E_n} \\right)^2 + \\left( \\frac{u_h}{h} \\right)^2 + \\frac{u_0^2 + u_1^2}{(s_0 - s_1)^2} + \\left( \\frac{u_k}{k} \\right)^2}';

const usable: Formula = {
  id: 'usable-energy',
  title: 'Usable energy of a battery',
  tex: [USABLE, U_USABLE],
  symbols: [
    ['E', 'usable energy', 'kWh'],
    ['E_n', 'nominal energy', 'kWh'],
    ['h', 'state of health', ''],
    ['s_0', 'state of charge at the start', ''],
    ['s_1', 'state of charge that must be kept', ''],
    ['k', 'factor for the temperature', ''],
    ['u_E', 'standard uncertainty of E', 'kWh'],
    ['u_n', 'standard uncertainty of the nominal energy', 'kWh'],
    ['u_h', 'standard uncertainty of the health', ''],
    ['u_0', 'standard uncertainty of the charge at the start', ''],
    ['u_1', 'standard uncertainty of the charge that is kept', ''],
    ['u_k', 'standard uncertainty of the factor', ''],
  ],
  by: [usableEnergy],
  holds: 'For a battery that drives the aircraft. Its mass stays the same as it is used.',
  example() {
    const store = { nominalKwh: 22, health: 0.9, chargeAtStart: 1, chargeKept: 0.2, temperatureFactor: 0.95 };
    const standards = { nominalKwh: 0.2, health: 0.01, chargeAtStart: 0.01, chargeKept: 0.02, temperatureFactor: 0.02 };
    const found = usableEnergy(store, standards);
    return {
      given: {
        E_n: [store.nominalKwh, 'kWh'],
        h: [store.health, ''],
        s_0: [store.chargeAtStart, ''],
        s_1: [store.chargeKept, ''],
        k: [store.temperatureFactor, ''],
        u_n: [standards.nominalKwh, 'kWh'],
        u_h: [standards.health, ''],
        u_0: [standards.chargeAtStart, ''],
        u_1: [standards.chargeKept, ''],
        u_k: [standards.temperatureFactor, ''],
      },
      steps: [sum(USABLE, found.kwh, 'kWh'), sum(U_USABLE, found.standardKwh, 'kWh')],
    };
  },
};

const RESERVE = 'E_r = \\frac{P_r \\cdot t_r}{60}';
const TIME = 't = 60 \\cdot \\frac{E - E_r}{P}';
const U_TIME = 'u_t = \\frac{\\sqrt{(60 \\cdot u_E)^2 + (t_r \\cdot u_r)^2 + (t \\cdot u_P)^2}}{P}';

const lasting: Formula = {
  id: 'energy-endurance',
  title: 'Endurance on an energy, above a reserve',
  tex: [RESERVE, TIME, U_TIME],
  symbols: [
    ['E_r', 'reserve', 'kWh'],
    ['P_r', 'power of the reserve', 'kW'],
    ['t_r', 'time of the reserve', 'min'],
    ['t', 'endurance; negative if the reserve is not there', 'min'],
    ['E', 'usable energy', 'kWh'],
    ['P', 'power in flight', 'kW'],
    ['u_t', 'standard uncertainty of the endurance', 'min'],
    ['u_E', 'standard uncertainty of the energy', 'kWh'],
    ['u_r', 'standard uncertainty of the power of the reserve', 'kW'],
    ['u_P', 'standard uncertainty of the power', 'kW'],
  ],
  by: [energyEndurance],
  holds: 'At one power. The aircraft lands as heavy as it takes off.',
  example() {
    const energy = { kwh: 15, standardKwh: 0.5 };
    const use = { powerKw: 20, standardPowerKw: 0.5, reserveKw: 18, reserveMin: 10, standardReserveKw: 1 };
    const found = energyEndurance(energy, use);
    return {
      given: {
        P_r: [use.reserveKw, 'kW'],
        t_r: [use.reserveMin, 'min'],
        E: [energy.kwh, 'kWh'],
        P: [use.powerKw, 'kW'],
        u_E: [energy.standardKwh, 'kWh'],
        u_r: [use.standardReserveKw, 'kW'],
        u_P: [use.standardPowerKw, 'kW'],
      },
      steps: [
        sum(RESERVE, found?.reserveKwh ?? Number.NaN, 'kWh'),
        sum(TIME, found?.minutes ?? Number.NaN, 'min'),
        sum(U_TIME, found?.standardMin ?? Number.NaN, 'min'),
      ],
    };
  },
};

export const energy: Topic = { id: 'energy', title: 'Energy for flight', formulas: [usable, lasting] };
