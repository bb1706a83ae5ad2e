import { type Rule, read } from '../rule.ts';

export const negligibleChange: Rule = {
  code: 'NEGLIGIBLE_CHANGE',
  severity: 'note',
  meaning: 'The change of empty mass is small enough to count as none',
  remedy: 'Nothing',
  source: read('AC 43.13-1B para 10-2c'),
  check: ({ results, regime, say }) => {
    const { lines, massKg } = results.change;
    const limitKg = regime.negligibleMassKg.value;
    const totalKg = lines.reduce((sum, line) => sum + Math.abs(line.massKg), 0);
    if (limitKg === null || lines.length === 0 || !(totalKg <= limitKg)) return [];
    return [
      {
        path: ['modifications'],
        sentence: `All changes together are ${say.measure('mass', totalKg, { extra: 1 })}, within the ${say.measure('mass', limitKg, { extra: 1 })} that counts as negligible`,
        data: { totalKg, changeKg: massKg, limitKg },
      },
    ];
  },
};
