import { burnPathOf } from '../../worker/core/calc/loading/burn-path.ts';
import { loadingOf } from '../../worker/core/calc/loading/loading-of.ts';
import { cgMm } from '../../worker/core/calc/mass/mass-moment.ts';
import { factorOf, type Units } from '../../worker/core/units/quantity.ts';
import { readVisit } from './read-visit.ts';

interface BurnInput {
  units: Units;
  loaded: { mass: number; arm: number };
  fuel: { mass: number; arm: number };
}

/** How far the centre of gravity moves while all the fuel burns, along `burnPathOf()`. */
export function fuelBurn({ units, loaded, fuel }: BurnInput): Record<string, number> {
  const [kg, mm] = [factorOf('mass', units), factorOf('arm', units)];
  const fuelKg = fuel.mass * kg;
  const tank = {
    id: 'T',
    name: 'T',
    kind: 'fuel' as const,
    armMm: fuel.arm * mm,
    capacityL: fuelKg,
    unusableL: 0,
    densityKgPerL: 1,
  };
  const aircraft = { ...readVisit('computed-only').aircraft, stations: [tank] };
  const dry = {
    massKg: (loaded.mass - fuel.mass) * kg,
    momentKgMm: (loaded.mass * loaded.arm - fuel.mass * fuel.arm) * kg * mm,
  };
  const path = burnPathOf(aircraft)(loadingOf(aircraft, dry, { T: fuelKg }));
  const [first, last] = [path[0], path.at(-1)];
  return { shift: first && last ? (cgMm(last) - cgMm(first)) / mm : Number.NaN };
}
