import type { Aircraft, LoadedAircraft } from '../../../record/visit.ts';
import type { ChangeLine, EquipmentChange } from '../../mass/equipment-change.ts';
import { atArm, type MassMoment, minus, NOTHING } from '../../mass/mass-moment.ts';
import { fixedCause, type Mismatch, massCause } from './candidate.ts';
import type { Cause } from './causes-result.ts';
import { ARM_RATIOS, MASS_RATIOS } from './digit-slips.ts';

/** Largest mass that people forget in an aircraft, in kg. */
const MOST_LOOSE_KG = 30;
/** A lighter item explains nothing that scales show. */
const LEAST_ITEM_KG = 0.3;

/** Returns a loose item at a place for persons or baggage; places at one arm count once. */
export function looseCauses(mismatch: Mismatch, { stations }: LoadedAircraft): Cause[] {
  const arms = new Set<number>();
  return stations.flatMap((station) => {
    if (station.kind === 'fuel' || station.kind === 'water' || station.kind === 'external') return [];
    if (arms.has(station.armMm)) return [];
    arms.add(station.armMm);
    return massCause(mismatch, station.armMm, [0, MOST_LOOSE_KG], { kind: 'loose-item', of: station.name });
  });
}

/** Returns recorded changes that the aircraft did not have when it was weighed, and listed items that were out. */
export function itemCauses(mismatch: Mismatch, { lines, after }: EquipmentChange): Cause[] {
  const counted = lines.filter(({ unlisted }) => !unlisted);
  const undone = counted.flatMap((line) => {
    const effect = minus(NOTHING, line);
    if (Math.abs(line.massKg) < LEAST_ITEM_KG && line.kind !== 'relocated') return [];
    return fixedCause(mismatch, effect, { kind: undoneKind(line), of: line.name, massKg: Math.abs(line.massKg) });
  });
  const changed = new Set(counted.map(({ item }) => item));
  const out = after
    .filter(({ id, massKg }) => massKg > LEAST_ITEM_KG && !changed.has(id))
    .flatMap(({ name, massKg, armMm }) =>
      fixedCause(mismatch, minus(NOTHING, atArm(massKg, armMm)), { kind: 'item-out', of: name, massKg }),
    );
  return [...undone, ...out.sort((a, b) => a.chiSquare - b.chiSquare)];
}

function undoneKind({ massKg }: ChangeLine): 'still-aboard' | 'not-aboard' | 'not-moved' {
  if (massKg === 0) return 'not-moved';
  return massKg < 0 ? 'still-aboard' : 'not-aboard';
}

/** Returns arms and masses of changed items that are wrong by their unit or sign. */
export function itemFigureCauses(mismatch: Mismatch, { lines }: EquipmentChange, { airframe }: Aircraft): Cause[] {
  const entered = lines.filter(({ kind, massKg, unlisted }) => kind !== 'removed' && massKg > 0 && !unlisted);
  return entered.flatMap(({ name, massKg, armMm }) => {
    const recorded = atArm(massKg, armMm);
    const ifTrue = (truth: MassMoment): MassMoment => minus(truth, recorded);
    return [
      ...ARM_RATIOS.map((ratio) => armMm * ratio)
        .filter((instead) => instead >= airframe.forwardMm && instead <= airframe.aftMm)
        .flatMap((instead) =>
          fixedCause(mismatch, ifTrue(atArm(massKg, instead)), {
            kind: 'item-arm',
            of: name,
            recorded: { quantity: 'arm', value: armMm, instead },
          }),
        ),
      ...MASS_RATIOS.map((ratio) => massKg * ratio).flatMap((instead) =>
        fixedCause(mismatch, ifTrue(atArm(instead, armMm)), {
          kind: 'item-mass-unit',
          of: name,
          recorded: { quantity: 'mass', value: massKg, instead },
        }),
      ),
    ];
  });
}
