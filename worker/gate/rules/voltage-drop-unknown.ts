import { wireSize } from '../../calc/electrical/wire-table.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';
import { conductorName } from '../wire-name.ts';

export const voltageDropUnknown: Rule = {
  code: 'VOLTAGE_DROP_UNKNOWN',
  severity: 'blocks',
  meaning:
    'The voltage drop of a circuit is not known: no table gives the resistance of its wire, and it was not measured',
  remedy: phrase`Measure the drop under load and enter it, or take a wire that the table has`,
  source: read('AC 43.13-1B 11-66: the drop follows from table 11-9, or is measured'),
  check: ({ visit, say }) =>
    (visit.electrical?.circuits ?? []).flatMap((circuit, index): Hit[] => {
      if (wireSize(circuit) || circuit.measuredDropV !== undefined) return [];
      return [
        {
          path: ['electrical', 'circuits', index, 'measuredDropV'],
          sentence: say.words`Circuit ${circuit.name}: no table gives the resistance of wire ${conductorName(circuit, say)}, and its drop was not measured`,
          data: { gauge: circuit.gauge, material: circuit.material ?? 'copper' },
        },
      ];
    }),
};
