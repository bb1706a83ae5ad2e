import fc from 'fast-check';
import { arm, defined, lateralArm, mass, name, optional, tenths } from './values.ts';

const item = fc
  .record({
    name: name(80),
    maker: optional(name(80)),
    partNumber: optional(name(60)),
    serial: optional(name(60)),
    version: optional(name(60)),
    location: optional(name(80)),
    mass: fc.oneof(fc.constant(0), mass(60)),
    massLimit: optional(tenths(0, 2)),
    massSource: optional(fc.constantFrom('weighed', 'maker', 'estimated')),
    arm,
    lateralArm: optional(lateralArm),
    onLoan: optional(fc.record({ from: name(80), until: optional(fc.constant('2027-09-30')) }).map(defined)),
    required: optional(fc.boolean()),
  })
  .map(defined);

const FATES = ['owner', 'scrapped', 'disposal', 'quarantined', 'returned', 'refitted', 'stored'];

/** What happens to an item of the list: one that leaves in a group does so with the next that leave in one. */
const fate = fc.record({
  kind: fc.constantFrom('stays', 'stays', 'removed', 'relocated', 'replaced', 'updated', 'exchanged', 'exchanged'),
  fate: fc.constantFrom(...FATES),
  what: fc.constantFrom('software', 'firmware', 'database', 'setting', 'repair'),
  from: name(60),
  to: name(60),
  reference: optional(name(200)),
  arm,
  by: item,
});

/** An equipment list, what becomes of each item, and what comes aboard. */
export const equipment = fc.record({
  listed: fc.array(fc.tuple(item, fate), { maxLength: 40 }),
  exchangedFor: fc.array(item, { minLength: 1, maxLength: 60 }),
  installed: fc.array(item, { maxLength: 10 }),
});

export type AnyEquipment = typeof equipment extends fc.Arbitrary<infer Value> ? Value : never;

/** The list and the changes as posted. */
export function changed({ listed, exchangedFor, installed }: AnyEquipment): { equipment: object[]; changes: object[] } {
  const idOf = (index: number): string => `item-${index}`;
  const leaving = listed.flatMap(([, { kind, fate: end }], index) =>
    kind === 'exchanged' ? [{ item: idOf(index), fate: end }] : [],
  );
  const single = listed.flatMap(([, { kind, fate: end, by, arm: at, ...update }], index): object[] => {
    const of = { kind, item: idOf(index) };
    if (kind === 'removed') return [{ ...of, fate: end }];
    if (kind === 'relocated') return [{ ...of, arm: at }];
    if (kind === 'replaced') return [{ ...of, fate: end, by: { id: `new-${index}`, ...by } }];
    return kind === 'updated' ? [defined({ ...of, ...update })] : [];
  });
  return {
    equipment: listed.map(([each], index) => ({ id: idOf(index), ...each })),
    changes: [
      ...(leaving.length > 0
        ? [{ kind: 'exchanged', out: leaving, in: exchangedFor.map((each, index) => ({ id: `in-${index}`, ...each })) }]
        : []),
      ...single,
      ...installed.map((each, index) => ({ kind: 'installed', id: `added-${index}`, ...each })),
    ],
  };
}
