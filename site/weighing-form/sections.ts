/** A group of fields under one heading; fields are JSON pointers into the record. */
export interface Section {
  legend: string;
  /** What a reader must know before filling it in. */
  hint?: string;
  fields: readonly string[];
}

const under = (base: string, ...names: string[]): string[] => names.map((name) => `${base}/${name}`);
const numbered = <Item>(count: number, make: (index: number) => Item): Item[] =>
  Array.from({ length: count }, (_, index) => make(index));

const READINGS = ['readings/0', 'readings/1', 'readings/2'];
const SCALE = ['serial', 'capacity', 'resolution', 'errorLimit', 'certificate', 'calibratedOn', 'calibrationDueOn'];
const POINT_NAMES = ['First point', 'Second point', 'Third point', 'Fourth point, where there is one'];

function point(index: number): Section {
  return {
    legend: POINT_NAMES[index] ?? '',
    fields: [
      ...under(`/weighing/points/${index}`, 'name', 'side', 'arm', 'armLimit', 'tare', ...READINGS),
      ...under(`/weighing/scales/${index}`, ...SCALE),
    ],
  };
}

/** The fields of a visit that only weighed, in the order in which they come to hand. */
export const SECTIONS: readonly Section[] = [
  {
    legend: 'Units and workshop',
    fields: [...under('/units', 'mass', 'arm', 'volume'), ...under('/workshop', 'name', 'address', 'contact', 'paper')],
  },
  {
    legend: 'Aircraft',
    fields: under(
      '/aircraft',
      ...['registration', 'maker', 'model', 'serial', 'regime', 'class', 'undercarriage', 'seats', 'maximumMass'],
      ...['datum', 'levelling'],
      ...['airframe/forward', 'airframe/aft'],
    ),
  },
  {
    legend: 'Envelope',
    hint: 'The corners of the permitted area, in order round it.',
    fields: numbered(6, (index) => under(`/aircraft/envelope/${index}`, 'arm', 'mass')).flat(),
  },
  { legend: 'Pilot’s seat', fields: under('/aircraft/stations/0', 'name', 'arm', 'minimumMass', 'maximumMass') },
  { legend: 'Passenger’s seat', fields: under('/aircraft/stations/1', 'name', 'arm', 'maximumMass') },
  { legend: 'Baggage', fields: under('/aircraft/stations/2', 'name', 'arm', 'maximumMass') },
  { legend: 'Tank', fields: under('/aircraft/stations/3', 'name', 'arm', 'capacity', 'unusable', 'density') },
  {
    legend: 'Last schedule',
    hint: 'The figures that this weighing is compared with.',
    fields: under(
      '/baseline',
      ...['source', 'reference', 'date', 'basis', 'weighedOn', 'emptyMass', 'emptyMassLimit', 'emptyArm'],
    ),
  },
  {
    legend: 'No earlier schedule',
    hint: 'Only without any earlier empty mass: the inspector’s reason to accept a weighing that nothing tests.',
    fields: ['/release/acknowledgements/0/reason'],
  },
  {
    legend: 'Weighed by',
    fields: under('/people/0', 'name', 'capacity', 'authorisation', 'validUntil'),
  },
  {
    legend: 'Checked and to be released by',
    fields: under('/people/1', 'name', 'capacity', 'authorisation', 'validUntil'),
  },
  {
    legend: 'The weighing',
    hint: 'Jacks and scales can slip: keep people clear of an aircraft that is being lifted.',
    fields: under(
      '/weighing',
      ...[
        'weighedAt',
        'place',
        'indoors',
        'fuelState',
        'oilState',
        'level/longitudinalDeg',
        'level/lateralDeg',
        'note',
      ],
    ),
  },
  ...numbered(4, point),
  ...numbered(2, (index) => ({
    legend: `Aboard, and not part of the aircraft: ${index === 0 ? 'first' : 'second'} item`,
    fields: under(`/weighing/itemsAboard/${index}`, 'name', 'mass', 'massLimit', 'arm'),
  })),
];
