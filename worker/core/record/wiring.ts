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

/** Wires may be recorded without the electrical part; they then name circuits of a drawing. */
const CIRCUITS = { unlessAbsent: 'electrical' };

export const Pin = part('pin', {
  pin: line('pin_pin', '5', 12),
  signal: line('pin_signal', 'TX A', 60),
  direction: choice('pin_direction', ['in', 'out', 'both', 'power', 'power-out', 'ground', 'shield', 'spare'] as const),
  level: choice('pin_level', [
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

export const Connector = part('connector', {
  id: identifier(['connector'], 'connector_id', 'J101'),
  name: line('connector_name', 'VHF radio, rear', 80),
  item: reference('equipment-item', 'connector_item', 'E31').optional(),
  partNumber: line('connector_partNumber', 'D-sub 15, crimp', 60).optional(),
  pins: list('connector_pins', Pin, { min: 1, max: 130 }),
});

export const WiringPoint = part('wiringPoint', {
  id: identifier(['wiring-point'], 'wiringPoint_id', 'GB1'),
  name: line('wiringPoint_name', 'Ground block, firewall', 80),
  kind: choice('wiringPoint_kind', ['ground', 'bus', 'protection', 'splice', 'terminal', 'switch'] as const),
  circuit: reference('circuit', 'wiringPoint_circuit', 'C-RADIO', CIRCUITS).optional(),
});

export const WireEnd = part('wireEnd', {
  at: reference(['connector', 'wiring-point'], 'wireEnd_at', 'J101', { code: 'WIRE_END_OPEN' }),
  pin: line('wireEnd_pin', '5', 12).optional(),
});

export const Wire = part(
  'wire',
  {
    mark: line('wire_mark', 'LM-R01', 24).optional(),
    change: choice('wire_change', ['added', 'kept', 'removed'] as const),
    from: WireEnd,
    to: WireEnd,
    gauge: choice('wire_gauge', GAUGES),
    material: choice('wire_material', MATERIALS).optional(),
    lengthM: number('wire_lengthM', 'm', 1.2, { min: 0, max: 200 }),
    gramPerM: number('wire_gramPerM', 'g/m', 5.1, {
      min: 0,
      max: 5000,
    }).optional(),
    kind: line('wire_kind', 'M22759/16', 60).optional(),
    colour: line('wire_colour', 'white', 30).optional(),
    shield: choice('wire_shield', ['none', 'from-end', 'to-end', 'both-ends', 'open'] as const),
    circuit: reference('circuit', 'wire_circuit', 'C-RADIO', CIRCUITS).optional(),
    arm: arm('wire_arm', 1260, { of: m.wiring_wire }).optional(),
    continuity: choice('wire_continuity', ['passed', 'failed'] as const).optional(),
    insulationMohm: number('wire_insulationMohm', 'MΩ', 100, {
      min: 0,
      max: 1_000_000,
    }).optional(),
  },
  'mark',
);

export const FoundWire = part('foundWire', {
  id: identifier(['found-wire'], 'foundWire_id', 'X07'),
  mark: line('foundWire_mark', 'LM-X07', 24).optional(),
  from: line('foundWire_from', 'Battery bus, stud 3', 80),
  to: line('foundWire_to', 'Cut behind the panel', 80),
  identifiedBy: choice('foundWire_identifiedBy', [
    'end-to-end',
    'continuity',
    'drawing',
    'colour',
    'not-identified',
  ] as const),
  decision: choice('foundWire_decision', ['traced', 'retained', 'capped', 'removed', 'unidentified'] as const),
  isLive: flag('foundWire_isLive', false).optional(),
  gauge: choice('foundWire_gauge', GAUGES).optional(),
  material: choice('foundWire_material', MATERIALS).optional(),
  lengthM: number('foundWire_lengthM', 'm', 2.1, { min: 0, max: 200 }).optional(),
  arm: arm('foundWire_arm', 1180, { of: m.wiring_wire }).optional(),
});

export const NearControl = part('nearControl', {
  what: line('nearControl_what', 'Loom to the fin, with X03', 80),
  control: line('nearControl_control', 'Elevator push-rod, frame 5', 80),
  distance: distance('nearControl_distance', 90, { min: 0 }),
  isSecured: flag('nearControl_isSecured', true),
  isGuarded: flag('nearControl_isGuarded', false),
});

export const WiringTest = part('wiringTest', {
  at: timestamp('wiringTest_at', '2026-11-05T08:40:00+01:00', m.wiring_testWiring),
  by: person('wiringTest_by', 'tomas', m.wiring_testedWiring),
  instrument: line('wiringTest_instrument', 'Insulation tester IT-5, serial 0442', 80),
  insulationLimitMohm: number('wiringTest_insulationLimitMohm', 'MΩ', 2, {
    min: 0,
    max: 1_000_000,
  }).optional(),
});

export const Wiring = part('wiring', {
  drawing: line('wiring_drawing', 'LM-121 issue B').optional(),
  connectors: list('wiring_connectors', Connector, { max: 60 }),
  points: list('wiring_points', WiringPoint, { max: 120 }),
  wires: list('wiring_wires', Wire, { max: 500 }),
  found: list('wiring_found', FoundWire, { max: 200 }).optional(),
  nearControls: list('wiring_nearControls', NearControl, {
    max: 60,
  }).optional(),
  test: WiringTest.optional(),
});
export type Wiring = z.infer<typeof Wiring>;
