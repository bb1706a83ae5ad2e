import type { Phase } from '../../../record/electrical.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PHASE_NAMES } from '../../phase-names.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Phases of flight in which a continuous load cannot be off without a switch. */
const FLIGHT: readonly Phase[] = ['takeOff', 'cruise', 'landing'];

export const loadPhaseMissing: Rule = {
  code: 'LOAD_PHASE_MISSING',
  severity: 'caution',
  meaning:
    'A continuous load has no current in a phase between taxiing and landing, or an essential one on the battery',
  remedy: m.loadPhaseMissing_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['electrical', 'loads'], visit.electrical?.loads, (load) => {
      const { name, duty, isEssential, change, amps, watts } = load;
      if (duty !== 'continuous' || change === 'removed') return undefined;
      const stated = { ...watts, ...amps };
      // A pump that runs for take-off and landing is off in between.
      const isInterrupted = stated.cruise === undefined && stated.taxi === undefined;
      const isThroughout = stated.takeOff !== undefined && stated.cruise !== undefined;
      const needed: readonly Phase[] = [
        ...(isThroughout ? (['taxi'] as const) : []),
        ...FLIGHT.filter((phase) => phase !== 'cruise' || !isInterrupted),
        ...(isEssential ? (['sourceFailed'] as const) : []),
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
