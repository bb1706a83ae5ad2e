import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const configurationWithoutSchedule: Rule = {
  code: 'CONFIGURATION_WITHOUT_SCHEDULE',
  severity: 'blocks',
  meaning: 'A configuration has neither its own schedule nor a kit that derives it from another',
  remedy: m.configurationWithoutSchedule_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hitsIn(['aircraft', 'configurations'], visit.aircraft.configurations, ({ id, name }) => {
      if (!results.schedule || results.configurations.some(({ empty }) => empty.id === id)) return undefined;
      return { sentence: said(m.configurationWithoutSchedule_noEmptyMass, { name }), data: { configuration: id } };
    }),
};
