import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Shortest usual run of a circuit, from its protection to its load, in m. */
const SHORTEST_M = 0.3;

export const circuitRunShort: Rule = {
  code: 'CIRCUIT_RUN_SHORT',
  severity: 'caution',
  meaning: 'The run of a circuit is shorter than one of its wires, or than 0.3 m',
  remedy: m.circuitRunShort_remedy,
  source: PRACTICE,
  check: ({ visit: { electrical, wiring } }) =>
    hitsIn(['electrical', 'circuits'], electrical?.circuits, ({ id, name, runM }) => {
      const wires = (wiring?.wires ?? []).filter(({ circuit }) => circuit === id);
      const leastM = Math.max(SHORTEST_M, ...wires.map(({ lengthM }) => lengthM));
      if (runM >= leastM) return undefined;
      const [run, limit] = figure.plainApart(runM, leastM, 2);
      return {
        field: 'runM',
        sentence: said(leastM > SHORTEST_M ? m.circuitRunShort_wire : m.circuitRunShort_usual, { name, run, limit }),
        data: { circuit: id, runM, leastM },
      };
    }),
};
