import { envelopeCorners } from '../../../calc/loading/aircraft-envelope.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { inConfiguration } from '../../in-configuration.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';
import { isInRange } from '../../within.ts';

/** Usual place of a limit on the mean aerodynamic chord. */
const CHORD_SHARE = { from: 0, to: 0.6 } as const;

/** Widest usual envelope, as a share of the length of the airframe. */
const LENGTH_SHARE = 0.06;

export const envelopeArmUnusual: Rule = {
  code: 'ENVELOPE_ARM_UNUSUAL',
  severity: 'caution',
  meaning: 'The envelope is unusually wide for the airframe, or a corner is off the usual part of the chord',
  remedy: m.envelopeArmUnusual_remedy,
  source: PRACTICE,
  check: (input) =>
    hits(sheetsOf(input), ({ path, name, aircraft }) => {
      const { airframe, mac } = aircraft;
      const arms = (envelopeCorners(aircraft) ?? []).map(({ armMm }) => armMm);
      const shareOf = (armMm: number): number | undefined => mac && (armMm - mac.leadingEdgeArmMm) / mac.lengthMm;
      const armMm = arms.find((each) => !isInRange(shareOf(each) ?? CHORD_SHARE.from, CHORD_SHARE));
      const at = [...path, aircraft.envelope ? 'envelope' : 'envelopeEquations'];
      if (armMm !== undefined)
        return {
          path: at,
          sentence: inConfiguration(
            name,
            said(m.envelopeArmUnusual_offChord, {
              arm: figure.measure('arm', armMm),
              share: figure.plain(100 * (shareOf(armMm) ?? 0), 0),
              from: 100 * CHORD_SHARE.from,
              to: 100 * CHORD_SHARE.to,
            }),
          ),
          data: { armMm },
        };
      const widthMm = Math.max(...arms) - Math.min(...arms);
      const mostMm = LENGTH_SHARE * (airframe.aftMm - airframe.forwardMm);
      if (arms.length === 0 || widthMm <= mostMm) return undefined;
      const [width, most] = figure.apart('arm', widthMm, mostMm);
      return {
        path: at,
        sentence: inConfiguration(name, said(m.envelopeArmUnusual_wide, { width, most, share: 100 * LENGTH_SHARE })),
        data: { widthMm, mostMm },
      };
    }),
};
