import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { inConfiguration } from '../../in-configuration.ts';
import { type Rule, read } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

export const emptyMassAboveCap: Rule = {
  code: 'EMPTY_MASS_ABOVE_CAP',
  severity: 'blocks',
  meaning: 'The empty mass is over the limit of the category or type',
  remedy: m.emptyMassAboveCap_remedy,
  source: read('UK SI 2021/879 art. 10 and EU 2018/1139 Annex I(e) (mass classes)'),
  check: (input) =>
    hits(sheetsOf(input), ({ path, name, aircraft, empty: { massKg: emptyKg } }) => {
      const capKg = aircraft.maximumEmptyMassKg;
      if (capKg === undefined || isAtMost(emptyKg, capKg)) return undefined;
      const [massText, limitText] = figure.apart('mass', emptyKg, capKg);
      return {
        path: [...path, 'maximumEmptyMass'],
        sentence: inConfiguration(
          name,
          said(m.emptyMassAboveCap_emptyMassAboveCap, { mass: massText, limit: limitText }),
        ),
        data: { emptyKg, capKg },
      };
    }),
};
