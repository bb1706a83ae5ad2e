import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const circuitWithoutLoad: Rule = {
  code: 'CIRCUIT_WITHOUT_LOAD',
  severity: 'caution',
  meaning: 'A circuit feeds no bus and no load of the record',
  remedy: m.circuitWithoutLoad_remedy,
  source: PRACTICE,
  check: ({ visit: { electrical } }) =>
    hitsIn(['electrical', 'circuits'], electrical?.circuits, ({ id, name, feedsBus, mainFeeder }) => {
      const feeds = electrical?.loads.some(({ circuit, change }) => circuit === id && change !== 'removed');
      if (feeds || feedsBus !== undefined || mainFeeder !== undefined) return undefined;
      return { sentence: said(m.circuitWithoutLoad_feedsNothing, { name }), data: { circuit: id } };
    }),
};
