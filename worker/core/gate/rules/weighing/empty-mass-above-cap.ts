import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const emptyMassAboveCap: Rule = {
  code: 'EMPTY_MASS_ABOVE_CAP',
  severity: 'blocks',
  meaning: 'The empty mass is over the limit of the category or type',
  remedy: m.emptyMassAboveCap_remedy,
  source: read('UK SI 2021/879 art. 10 and EU 2018/1139 Annex I(e) (mass classes)'),
  check: ({ visit, results }) => {
    const capKg = visit.aircraft.maximumEmptyMassKg;
    const emptyKg = results.schedule?.massKg;
    if (capKg === undefined || emptyKg === undefined || isAtMost(emptyKg, capKg)) return undefined;
    const [massText, limitText] = figure.apart('mass', emptyKg, capKg);
    return {
      path: ['aircraft', 'maximumEmptyMass'],
      sentence: said(m.emptyMassAboveCap_emptyMassAboveCap, { mass: massText, limit: limitText }),
      data: { emptyKg, capKg },
    };
  },
};
