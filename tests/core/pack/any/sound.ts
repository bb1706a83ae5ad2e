import type { AnyEquipment } from './changes.ts';
import type { AnyLimits } from './envelopes.ts';
import type { AnyShape } from './shape.ts';
import { type AnyStation, armsOf, mostOf } from './stations.ts';
import type { AnyTraction } from './traction.ts';

/** More than any least pilot, in kg and in lb. */
const PERSON = 200;
/** The most on one place, so that a light aircraft stays one. */
const PLACE = 300;

/**
 * The same aircraft as it can be released: nobody is too heavy to fly it, its batteries are healthy, and every other
 * configuration has an empty mass. Its loads and the names are as they were drawn.
 *
 * @param of what the scales of the record show, if it was weighed, and whether it has papers
 */
export function sound(drawn: AnyShape, of: { weighedMass: number | undefined; hasPapers: boolean }): AnyShape {
  const places = drawn.stations.map(soundStation);
  const empty = of.weighedMass ?? Math.min(drawn.emptyMass, 800) + 100;
  const most = places.reduce((sum, place) => sum + Math.min(mostOf(place), PLACE), 0);
  const maximumMass = empty + Math.max(PERSON, Math.min(most, 1.4 * empty));
  return {
    ...drawn,
    stations: places,
    emptyMass: empty,
    maximumMass,
    emptyLateralArm: drawn.emptyLateralArm ?? 0,
    ofClass: soundClass(drawn.ofClass, places),
    ownLimits: soundLimits(drawn, places, maximumMass),
    configurations: drawn.configurations.map((each, index) => ({
      ...each,
      limits: undefined,
      maximumMass: undefined,
      stations: undefined,
      from: isKnown(each.from, index, of.hasPapers) ? each.from : 'worked',
      share: ((index - 1) / drawn.configurations.length) * each.share,
      kit: each.kit.map((line) => ({ ...line, mass: Math.min(line.mass, 1) })),
      schedule: { ...each.schedule, emptyMass: empty, emptyArm: each.schedule.emptyArm ?? drawn.emptyArm },
    })),
  };
}

/** Whether a configuration has an empty mass: it follows from one before it, or has papers of its own. */
function isKnown(from: string, index: number, hasPapers: boolean): boolean {
  if (from === 'another') return index > 0;
  return from === 'standing' ? hasPapers : from === 'worked';
}

function soundStation(place: AnyStation): AnyStation {
  const { kind, maximumMass } = place;
  const isSeat = kind === 'pilot' || kind === 'passenger';
  return {
    ...place,
    ...(maximumMass !== undefined && {
      maximumMass: isSeat ? PERSON + (maximumMass % 100) : Math.min(maximumMass, PLACE),
    }),
    minimumMass: place.minimumMass && 1,
    leastUsable: undefined,
    lateralArm: place.lateralArm ?? 0,
  };
}

function soundLimits({ ownLimits, emptyArm }: AnyShape, places: readonly AnyStation[], maximumMass: number): AnyLimits {
  const arms = [emptyArm, ...places.flatMap(armsOf)];
  const [forward, aft] = [Math.min(...arms) - 1, Math.max(...arms) + 1];
  const corner = (massAt: number, at: number): object => ({ mass: massAt, arm: at });
  const { limitsOfBalance } = ownLimits;
  const isStated = Object.keys(limitsOfBalance).length > 0;
  const box = [corner(1, forward), corner(maximumMass, forward), corner(maximumMass, aft), corner(1, aft)];
  return {
    ...ownLimits,
    limitsFrom: 'flight-manual',
    limitsOfBalance: isStated ? limitsOfBalance : { envelope: box },
    maximumZeroFuelMass: undefined,
    maximumLandingMass: ownLimits.maximumLandingMass && maximumMass - 1,
    maximumEmptyMass: undefined,
    minimumMass: undefined,
    nonLifting: ownLimits.nonLifting && { maximumMass, liftingPartsMass: ownLimits.nonLifting.liftingPartsMass },
    emptyRange: ownLimits.emptyRange && { forward: forward - 2000, aft: aft + 2000 },
    loadingLimits: ownLimits.loadingLimits.map((limit) => ({
      ...limit,
      maximumMass: Math.max(limit.maximumMass, PERSON * places.filter(({ kind }) => kind === 'pilot').length),
    })),
  };
}

function soundClass(drawn: AnyShape['ofClass'], places: readonly AnyStation[]): AnyShape['ofClass'] {
  const hasFuel = drawn.engine !== undefined || places.some(({ kind }) => kind === 'fuel');
  return {
    ...drawn,
    class: drawn.class === 'glider' && hasFuel ? 'self-launching-glider' : drawn.class,
    noLateralLimits: drawn.noLateralLimits ?? 'Manual 2.6',
    levelAttitude: undefined,
    hangBolt: drawn.hangBolt && { ...drawn.hangBolt, minimumDeg: -90, maximumDeg: 90 },
    energyStores: drawn.energyStores?.map((store) => ({
      ...store,
      healthPercent: 96,
      leastHealthPercent: 80,
      leastChargePercent: 10,
      cycles: 3,
    })),
    energyUse: drawn.energyUse && { cruisePowerKw: 0.1, reservePowerKw: undefined, reserveMin: 1 },
  };
}

/** The same changes of light items, of which none is required. */
export function soundEquipment({ listed, exchangedFor, installed }: AnyEquipment): AnyEquipment {
  const light = (item: AnyEquipment['installed'][number]) => ({
    ...item,
    mass: Math.min(item.mass, 1),
    lateralArm: item.lateralArm ?? 0,
    required: false,
  });
  return {
    listed: listed.map(([item, fate]) => [light(item), { ...fate, by: light(fate.by) }]),
    exchangedFor: exchangedFor.map(light),
    installed: installed.map(light),
  };
}

/** The same circuit with every check passed. */
export function soundTraction(drawn: AnyTraction): AnyTraction {
  const insulation = {
    instrument: drawn.insulation?.instrument,
    resistanceMohm: 12,
    limitMohm: 0.5,
    testV: drawn.nominalV,
  };
  return { ...drawn, isIsolated: true, isWatched: true, insulation, isOpened: true };
}
