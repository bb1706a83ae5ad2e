import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { netsOf } from '../../../../worker/core/calc/wiring/nets.ts';
import { nodeKey, pinGraph } from '../../../../worker/core/calc/wiring/pin-graph.ts';
import type { Pin, Wire, WireEnd, Wiring } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';

const PINS = ['1', '2', '3', '4'];
const POINTS = [
  { id: 'GB', name: 'ground', kind: 'ground' },
  { id: 'SP', name: 'splice', kind: 'splice' },
  { id: 'CB', name: 'breaker', kind: 'protection', circuit: 'C' },
  { id: 'BUS', name: 'bus', kind: 'bus' },
] as const;

const wire = (from: WireEnd, to: WireEnd, change: Wire['change'] = 'added'): Wire => ({
  from,
  to,
  change,
  gauge: '22',
  lengthM: 1,
  shield: 'none',
});
const pin = (connector: string, name: string): WireEnd => ({ at: connector, pin: name });
const contact = (name: string, direction: Pin['direction'] = 'both'): Pin => ({ pin: name, signal: name, direction });

const wiringOf = (wires: Wire[]): Wiring => ({
  connectors: ['J1', 'J2'].map((id) => ({ id, name: id, pins: PINS.map((name) => contact(name)) })),
  points: [...POINTS],
  wires,
});

const end = fc.oneof(
  fc.record({ at: fc.constantFrom('J1', 'J2'), pin: fc.constantFrom(...PINS) }),
  fc.record({ at: fc.constantFrom(...POINTS.map(({ id }) => id)) }),
);
const wires = fc.array(
  fc
    .tuple(end, end, fc.constantFrom<Wire['change']>('added', 'kept', 'removed'))
    .map(([a, b, change]) => wire(a, b, change)),
  { maxLength: 16 },
);

describe('pinGraph()', () => {
  test('is symmetric: what leads from A to B leads from B to A', () =>
    fc.assert(
      fc.property(wires, (list) => {
        const { connections } = pinGraph(wiringOf(list));
        for (const [from, leads] of connections) {
          for (const { to, index, isForward } of leads) {
            const back = connections.get(nodeKey(to)) ?? [];
            expect(
              back.some(
                (other) => other.index === index && nodeKey(other.to) === from && other.isForward !== isForward,
              ),
            ).toBe(true);
          }
        }
      }),
      RUNS,
    ));

  test('holds each wire that is aboard by both its ends, and none that was taken out', () =>
    fc.assert(
      fc.property(wires, (list) => {
        const ends = [...pinGraph(wiringOf(list)).connections.values()].flat();
        expect(ends).toHaveLength(2 * list.filter(({ change }) => change !== 'removed').length);
      }),
      RUNS,
    ));
});

describe('netsOf()', () => {
  const nets = (list: Wire[]) => netsOf(wiringOf(list), pinGraph(wiringOf(list)));
  const keys = (list: Wire[]) => nets(list).map((net) => net.pins.map(({ key }) => key).sort());

  test('puts every contact into one net, whichever way the wires are written', () =>
    fc.assert(
      fc.property(wires, (list) => {
        const found = keys(list);
        expect(found.flat().sort()).toEqual(['J1', 'J2'].flatMap((id) => PINS.map((name) => `${id}/${name}`)));
        expect(keys(list.map((one) => ({ ...one, from: one.to, to: one.from })))).toEqual(found);
      }),
      RUNS,
    ));

  test('goes on through a splice and ends at a bus, a breaker and a ground', () => {
    const at = (id: string): WireEnd => ({ at: id });
    expect(keys([wire(pin('J1', '1'), at('SP')), wire(at('SP'), pin('J2', '1'))])[0]).toEqual(['J1/1', 'J2/1']);
    for (const id of ['GB', 'CB', 'BUS'])
      expect(keys([wire(pin('J1', '1'), at(id)), wire(at(id), pin('J2', '1'))])[0]).toEqual(['J1/1']);
    const [net] = nets([wire(pin('J1', '1'), at('CB'))]);
    expect([...(net?.reaches ?? [])]).toEqual(['protection']);
    expect(net?.circuits).toEqual(['C']);
  });
});
