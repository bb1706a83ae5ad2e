import { EQUIPMENT_KIND_NAMES, type EquipmentKind } from '../record/equipment-kind.ts';
import type { Place } from '../record/record-index.ts';

type Kinds = readonly EquipmentKind[];

const TRANSPONDERS: Kinds = ['transponder-mode-c', 'transponder-mode-s'];
const LOCATORS: Kinds = ['fixed-locator', 'portable-locator'];
const CONSPICUITY: Kinds = [
  'conspicuity-device',
  'position-transmitter',
  'transponder-mode-s',
  'traffic-receiver',
  'navigation-receiver',
  'display',
];
const RADIOS: Kinds = ['vhf-radio', 'hand-held-radio', 'navigation-receiver', 'display', 'intercom'];
const POSITION: Kinds = [...CONSPICUITY, ...LOCATORS, 'position-receiver'];
const ANTENNAS: Kinds = ['transmitting-antenna', 'receiving-antenna'];

const OF_DEVICE: Readonly<Record<string, Kinds>> = {
  transponder: TRANSPONDERS,
  conspicuity: CONSPICUITY,
  locator: LOCATORS,
};

/** Devices in which an antenna may be built; of other uses any item. */
const OF_ANTENNA: Readonly<Record<string, Kinds>> = {
  'vhf-radio': RADIOS,
  transponder: TRANSPONDERS,
  conspicuity: CONSPICUITY,
  'satellite-position': POSITION,
  locator: LOCATORS,
  navigation: RADIOS,
};

/** Kinds that never draw current. */
const DEAD: ReadonlySet<EquipmentKind> = new Set<EquipmentKind>([
  ...ANTENNAS,
  'antenna-cable',
  'battery',
  'engine-mount',
  'exhaust',
  'sail',
  'harness',
  'hood',
  'fuel-tank',
  'fuel-line',
  'fluid-line',
  'undercarriage-leg',
  'wheel',
  'wheel-fairing',
  'skid',
  'float',
  'ski',
  'spinner',
  'fairing',
  'covering',
  'mass-balance',
  'hang-bolt',
  'pitot-static-line',
  'static-port',
  'rescue-parachute',
  'rescue-rocket',
  'fixed-ballast',
  'removable-ballast',
  'placard',
]);
const LOADS: Kinds = EQUIPMENT_KIND_NAMES.filter((kind) => !DEAD.has(kind));

const BATTERIES: Kinds = ['battery', 'back-up-battery', 'traction-battery'];
const SOURCES: Kinds = [...BATTERIES, 'alternator', 'engine', 'motor', 'regulator', 'converter', 'motor-controller'];

/**
 * Kinds of item that a reference may name, by the part of the record around it; undefined if any.
 *
 * @source common practice, no source
 */
export function kindsExpected({ path, around }: Pick<Place, 'path' | 'around'>): Kinds | undefined {
  const [section, list] = path;
  const entry = around.at(-1)?.value ?? {};
  if (section === 'antennas') {
    const built = OF_ANTENNA[String(entry.use)];
    return built && [...ANTENNAS, ...built];
  }
  if (section === 'electrical') return { battery: BATTERIES, sources: SOURCES, loads: LOADS }[String(list)];
  if (section !== 'surveillance') return undefined;
  if (list === 'devices') return OF_DEVICE[String(entry.kind)];
  return { radioChecks: RADIOS, altimeters: ALTIMETERS }[String(list)];
}

const ALTIMETERS: Kinds = ['altimeter', 'air-data-unit', 'display', 'engine-instrument'];
