import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { wireKey, wireName } from '../../wire-name.ts';

export const insulationNotMeasured: Rule = {
  code: 'INSULATION_NOT_MEASURED',
  severity: 'caution',
  meaning: 'The insulation of a new wire was not measured',
  remedy: m.insulationNotMeasured_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['wiring', 'wires'], visit.wiring?.wires, (wire) =>
      wire.change === 'added' && wire.insulationMohm === undefined
        ? {
            field: 'insulationMohm',
            sentence: said(m.insulationNotMeasured_noFigure, { wire: wireName(wire) }),
            data: { wire: wireKey(wire) },
          }
        : undefined,
    ),
};
