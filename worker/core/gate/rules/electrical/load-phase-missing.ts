import type { Phase } from '../../../record/electrical.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PHASE_NAMES } from '../../phase-names.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Phases between the first and the last in which a continuous load cannot be off without a switch. */
const FLIGHT: readonly Phase[] = ['takeOff', 'cruise', 'landing'];

export const loadPhaseMissing: Rule = {
  code: 'LOAD_PHASE_MISSING',
  severity: 'caution',
  meaning: 'An essential continuous load has no current in a phase of flight, or on the battery',
  remedy: m.loadPhaseMissing_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['electrical', 'loads'], visit.electrical?.loads, (load) => {
      const { name, duty, isEssential, change, amps, watts } = load;
      if (duty !== 'continuous' || !isEssential || change === 'removed') return undefined;
      const stated = { ...watts, ...amps };
      // A pump that runs for take-off and landing is off in between.
      const isInterrupted = stated.cruise === undefined && stated.taxi === undefined;
      const needed: readonly Phase[] = [
        ...FLIGHT.filter((phase) => phase !== 'cruise' || !isInterrupted),
        'sourceFailed',
      ];
      const missing = needed.filter((phase) => stated[phase] === undefined);
      if (missing.length === 0) return undefined;
      return {
        field: amps ? 'amps' : 'watts',
        sentence: said(m.loadPhaseMissing_noCurrent, {
          name,
          phases: list(missing.map((phase) => said(PHASE_NAMES[phase]))),
        }),
        data: { load: load.id, phases: missing.join(', ') },
      };
    }),
};
