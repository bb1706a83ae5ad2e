import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits } from '../../hits.ts';
import { inConfiguration } from '../../in-configuration.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

/** Loadings that every type flies. */
const STANDARD: ReadonlySet<string> = new Set(['standard-pilot', 'two-standard-persons']);

export const standardLoadingOutside: Rule = {
  code: 'STANDARD_LOADING_OUTSIDE',
  severity: 'caution',
  meaning: 'The aircraft is outside its envelope with a standard crew, though the limits are those of its manual',
  remedy: m.standardLoadingOutside_remedy,
  source: PRACTICE,
  check: (input) =>
    hits(sheetsOf(input), ({ path, name, aircraft, loading }) => {
      if (aircraft.limitsFrom !== 'flight-manual') return undefined;
      return hits(loading.loadings, ({ kind, verdict }) => {
        if (verdict.state !== 'outside' || !STANDARD.has(kind)) return undefined;
        const { side, margin } = verdict.worst;
        const isMass = side === 'above' || side === 'below';
        return {
          path: [...path, aircraft.envelopeEquations ? 'envelopeEquations' : 'envelope'],
          sentence: inConfiguration(
            name,
            said(kind === 'standard-pilot' ? m.standardLoadingOutside_pilot : m.standardLoadingOutside_two, {
              excess: figure.apart(isMass ? 'mass' : 'arm', -margin, 0)[0],
              side: termOf(side),
            }),
          ),
          data: { kind, side, margin },
        };
      });
    }),
};
