import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import {
  arm,
  choice,
  distance,
  flag,
  identifier,
  line,
  list,
  number,
  part,
  person,
  reference,
  timestamp,
} from './field.ts';
import { GAUGES, MATERIALS } from './wire-size.ts';

/** Wires may be recorded without the electrical part, and then name circuits of a drawing. */
const CIRCUITS = { unlessAbsent: 'electrical' };

export const Pin = part('Pin', 'One contact of a connector', {
  pin: line('Pin', 'As marked on the connector', '5', 12),
  signal: line('Signal', 'Name of the signal', 'TX A', 60),
  direction: choice('Direction', 'Seen from the equipment', [
    'in',
    'out',
    'both',
    'power',
    'power-out',
    'ground',
    'shield',
    'spare',
  ] as const),
  level: choice('Level', 'Electrical level', [
    'logic',
    'rs232',
    'rs422-a',
    'rs422-b',
    'arinc429-a',
    'arinc429-b',
    'audio-high',
    'audio-low',
    'microphone',
    'discrete',
    'supply',
    'other',
  ] as const).optional(),
});

export const Connector = part('Connector', 'A connector and what its contacts carry', {
  id: identifier(['connector'], 'Identifier', 'As in the drawing', 'J101'),
  name: line('Name', 'What it belongs to', 'VHF radio, rear', 80),
  item: reference('equipment-item', 'Item', 'Line of the equipment list', 'E31').optional(),
  partNumber: line('Part number', 'Connector and crimp', 'D-sub 15, crimp', 60).optional(),
  pins: list('Pins', 'Every contact that is fitted', Pin, { min: 1, max: 130 }),
});

export const WiringPoint = part('Point', 'A place other than a connector where wires end', {
  id: identifier(['wiring-point'], 'Identifier', 'As in the drawing', 'GB1'),
  name: line('Name', 'What it is', 'Ground block, firewall', 80),
  kind: choice('Kind', 'What it does', ['ground', 'bus', 'protection', 'splice', 'terminal', 'switch'] as const),
  circuit: reference('circuit', 'Circuit', 'Circuit that a protection opens', 'C-RADIO', CIRCUITS).optional(),
});

export const WireEnd = part('End', 'Where a wire ends', {
  at: reference(['connector', 'wiring-point'], 'At', 'Connector or point', 'J101', { code: 'WIRE_END_OPEN' }),
  pin: line('Pin', 'Contact, on a connector', '5', 12).optional(),
});

export const Wire = part(
  'Wire',
  'One wire with both ends',
  {
    mark: line('Mark', 'As printed on the wire at both ends', 'LM-R01', 24).optional(),
    change: choice('Change', 'What the visit did to it', ['added', 'kept', 'removed'] as const),
    from: WireEnd,
    to: WireEnd,
    gauge: choice('Gauge', 'Size', GAUGES),
    material: choice('Material', 'Metal of the conductor; copper where nothing is stated', MATERIALS).optional(),
    lengthM: number('Length', 'Length', 'm', 1.2, { min: 0, max: 200 }),
    gramPerM: number('Mass', 'Mass of a metre by its maker, in place of the estimate', 'g/m', 5.1, {
      min: 0,
      max: 5000,
    }).optional(),
    kind: line('Kind', 'Specification', 'M22759/16', 60).optional(),
    colour: line('Colour', 'Colour', 'white', 30).optional(),
    shield: choice('Shield', 'Which ends of the screen are grounded', [
      'none',
      'from-end',
      'to-end',
      'both-ends',
      'open',
    ] as const),
    circuit: reference('circuit', 'Circuit', 'Circuit that it belongs to', 'C-RADIO', CIRCUITS).optional(),
    arm: arm('Arm', 'Arm of its middle', 1260, { of: m.wiring_wire }).optional(),
    continuity: choice('Continuity', 'End to end', ['passed', 'failed'] as const).optional(),
    insulationMohm: number('Insulation', 'Resistance to the structure and its neighbours', 'MΩ', 100, {
      min: 0,
      max: 1_000_000,
    }).optional(),
  },
  'mark',
);

export const FoundWire = part('Found wire', 'A wire found in the aircraft, of unknown use at first', {
  id: identifier(['found-wire'], 'Identifier', 'How the record names it', 'X07'),
  mark: line('Mark', 'Mark on it now', 'LM-X07', 24).optional(),
  from: line('From', 'One end', 'Battery bus, stud 3', 80),
  to: line('To', 'The other end', 'Cut behind the panel', 80),
  identifiedBy: choice('Identified by', 'How it was identified', [
    'end-to-end',
    'continuity',
    'drawing',
    'colour',
    'not-identified',
  ] as const),
  decision: choice('Decision', 'What became of it', [
    'traced',
    'retained',
    'capped',
    'removed',
    'unidentified',
  ] as const),
  isLive: flag('Live', 'Carried voltage when found', false).optional(),
  gauge: choice('Gauge', 'Size', GAUGES).optional(),
  material: choice('Material', 'Metal of the conductor; copper where nothing is stated', MATERIALS).optional(),
  lengthM: number('Length', 'Length taken out', 'm', 2.1, { min: 0, max: 200 }).optional(),
  arm: arm('Arm', 'Arm of its middle', 1180, { of: m.wiring_wire }).optional(),
});

export const NearControl = part('Near a control', 'A wire or loom that passes close to a control, as somebody saw it', {
  what: line('What', 'Wire or loom, found or new', 'Loom to the fin, with X03', 80),
  control: line('Control', 'What moves beside it', 'Elevator push-rod, frame 5', 80),
  distance: distance('Distance', 'Least distance over the whole travel of the control', 90, { min: 0 }),
  isSecured: flag('Secured', 'Clamped so that it cannot reach the control when any one clamp fails', true),
  isGuarded: flag('Guarded', 'A guard or conduit keeps it off the control', false),
});

export const WiringTest = part('Test', 'Continuity and insulation test of the wires of this visit', {
  at: timestamp('At', 'When', '2026-11-05T08:40:00+01:00', m.wiring_testWiring),
  by: person('By', 'Person who tested', 'tomas', m.wiring_testedWiring),
  instrument: line('Instrument', 'What it was measured with', 'Insulation tester IT-5, serial 0442', 80),
  insulationLimitMohm: number('Insulation limit', 'Least insulation resistance allowed', 'MΩ', 2, {
    min: 0,
    max: 1_000_000,
  }).optional(),
});

export const Wiring = part('Wiring', 'Connectors, wires, wires found, and their tests', {
  drawing: line('Drawing', 'Wiring list or drawing', 'LM-121 issue B').optional(),
  connectors: list('Connectors', 'Every connector that the visit touched', Connector, { max: 60 }),
  points: list('Points', 'Grounds, buses, breakers, splices, terminals', WiringPoint, { max: 120 }),
  wires: list('Wires', 'Every wire of those connectors', Wire, { max: 500 }),
  found: list('Found wires', 'Wires found and what became of them', FoundWire, { max: 200 }).optional(),
  nearControls: list('Near controls', 'Wires and looms that pass close to controls', NearControl, {
    max: 60,
  }).optional(),
  test: WiringTest.optional(),
});
export type Wiring = z.infer<typeof Wiring>;
