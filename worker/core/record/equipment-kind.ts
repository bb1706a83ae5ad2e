/** What follows from the kind of an item for the work on it. */
export const TRAITS = [
  'transmits',
  'sends-address',
  'electrical',
  'magnetic',
  'air-data',
  'software',
  'wetted',
  'control',
  'critical',
  'life',
  'stored-energy',
] as const;
export type Trait = (typeof TRAITS)[number];

const traits = (...of: readonly Trait[]): readonly Trait[] => of;

const RADIO = traits('transmits', 'electrical', 'software');
const ELECTRICAL = traits('electrical');
const SOFTWARE = traits('electrical', 'software');
const BATTERY = traits('electrical', 'magnetic', 'life', 'stored-energy');
const AIR_DATA = traits('air-data');
const FUEL = traits('wetted', 'critical');
const ROTOR = traits('critical', 'life');
const CONTROL = traits('control', 'critical');
const RESCUE = traits('stored-energy', 'life', 'critical');

/**
 * Kinds of equipment with their traits. A record may add traits to an item, but never take them off.
 *
 * @source common practice, no source; critical: AMC1 CAO.A.060(h) (read) for controls, engines, propellers and rotors
 */
export const EQUIPMENT_KINDS = {
  'vhf-radio': traits(...RADIO, 'magnetic'),
  'hand-held-radio': traits('transmits'),
  intercom: ELECTRICAL,
  'push-to-talk': ELECTRICAL,
  'headset-socket': ELECTRICAL,
  'transponder-mode-c': traits('transmits', 'electrical', 'life'),
  'transponder-mode-s': traits(...RADIO, 'sends-address', 'life'),
  'position-transmitter': traits(...RADIO, 'sends-address'),
  'conspicuity-device': traits(...RADIO, 'sends-address'),
  'traffic-receiver': SOFTWARE,
  'altitude-encoder': traits('air-data', 'electrical', 'life'),
  'position-receiver': SOFTWARE,
  'fixed-locator': traits('transmits', 'sends-address', 'life', 'stored-energy'),
  'portable-locator': traits('transmits', 'life', 'stored-energy'),
  'locator-switch': ELECTRICAL,
  'transmitting-antenna': traits('transmits'),
  'receiving-antenna': traits(),
  'antenna-cable': traits(),
  'navigation-receiver': SOFTWARE,
  autopilot: traits(...SOFTWARE, 'critical'),
  servo: traits('electrical', 'control', 'critical'),
  display: SOFTWARE,
  'air-data-unit': traits('air-data', 'electrical', 'software'),
  magnetometer: traits('magnetic', 'electrical', 'software'),
  compass: traits('magnetic'),
  'engine-monitor': SOFTWARE,
  'airspeed-indicator': AIR_DATA,
  altimeter: AIR_DATA,
  'climb-indicator': AIR_DATA,
  'attitude-instrument': traits('electrical', 'magnetic'),
  'suction-instrument': traits(),
  'slip-indicator': traits(),
  'engine-instrument': traits(),
  'fuel-gauge': traits(),
  'hour-meter': traits(),
  'stall-warning': ELECTRICAL,
  'carbon-monoxide-detector': traits('life'),
  battery: BATTERY,
  'back-up-battery': BATTERY,
  'traction-battery': traits(...BATTERY, 'critical'),
  alternator: traits('electrical', 'magnetic'),
  regulator: ELECTRICAL,
  contactor: traits('electrical', 'magnetic'),
  starter: traits('electrical', 'magnetic'),
  'power-socket': ELECTRICAL,
  converter: ELECTRICAL,
  distribution: ELECTRICAL,
  loom: ELECTRICAL,
  'position-light': ELECTRICAL,
  'strobe-light': ELECTRICAL,
  'landing-light': ELECTRICAL,
  'cabin-light': ELECTRICAL,
  'fuel-tank': FUEL,
  'fuel-line': FUEL,
  'fuel-pump': FUEL,
  'electric-fuel-pump': traits(...FUEL, 'electrical'),
  'fuel-filter': traits('wetted'),
  'fluid-line': traits('wetted', 'life'),
  radiator: traits('wetted'),
  engine: traits('critical', 'life'),
  motor: traits('critical', 'life', 'electrical'),
  'motor-controller': traits(...SOFTWARE, 'critical'),
  'engine-control-unit': traits(...SOFTWARE, 'critical'),
  ignition: traits('electrical', 'critical'),
  carburettor: FUEL,
  exhaust: traits(),
  'engine-mount': traits('critical'),
  cowling: traits(),
  gearbox: traits('critical', 'life'),
  propeller: traits('critical', 'life'),
  'propeller-governor': traits('critical', 'life'),
  spinner: traits(),
  rotor: ROTOR,
  'rotor-head': ROTOR,
  'tail-rotor': ROTOR,
  'rotor-drive': ROTOR,
  wing: traits('critical'),
  sail: traits('critical', 'life'),
  'tail-unit': traits('critical'),
  canopy: traits('critical', 'life'),
  'control-run': CONTROL,
  'control-surface': CONTROL,
  'mass-balance': traits('critical'),
  'hang-bolt': traits('critical', 'life'),
  'tow-release': traits(...CONTROL, 'life'),
  seat: traits(),
  harness: traits('life'),
  upholstery: traits(),
  hood: traits(),
  door: traits(),
  'fire-extinguisher': traits('life', 'stored-energy'),
  'oxygen-system': traits('stored-energy', 'life'),
  heater: traits(),
  'cabin-fitting': traits(),
  'undercarriage-leg': traits(),
  wheel: traits(),
  brake: traits(),
  'wheel-fairing': traits(),
  retraction: traits('critical'),
  skid: traits(),
  float: traits(),
  ski: traits(),
  steering: traits('control'),
  'water-rudder': traits('control'),
  'primary-structure': traits('critical'),
  'secondary-structure': traits(),
  fairing: traits(),
  covering: traits(),
  'pitot-head': AIR_DATA,
  'static-port': AIR_DATA,
  'pitot-static-line': AIR_DATA,
  'rescue-parachute': RESCUE,
  'rescue-rocket': RESCUE,
  'fixed-ballast': traits(),
  'removable-ballast': traits(),
  placard: traits(),
  other: traits(),
} as const satisfies Readonly<Record<string, readonly Trait[]>>;
export type EquipmentKind = keyof typeof EQUIPMENT_KINDS;

export const EQUIPMENT_KIND_NAMES = Object.keys(EQUIPMENT_KINDS) as [EquipmentKind, ...EquipmentKind[]];

/** Traits of an item: those of its kind, and those that the record adds. */
export function traitsOf({
  kind,
  traits: added = [],
}: {
  kind?: EquipmentKind | undefined;
  traits?: readonly Trait[] | undefined;
}): ReadonlySet<Trait> {
  return new Set([...(kind ? EQUIPMENT_KINDS[kind] : []), ...added]);
}
