import { isAtLeast } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const plateSmall: Rule = {
  code: 'PLATE_SMALL',
  severity: 'caution',
  meaning: 'A ground plane is smaller than a quarter wave around the antenna, or missing',
  remedy: phrase`Fit a larger plane, or show by test that the range suffices`,
  source: read('AC 43.13-2B chapter 3 as quoted by a beacon maker: a quarter wavelength on every side'),
  check: ({ visit, results, say }) =>
    (visit.antennas?.items ?? []).flatMap(({ name, needsGroundPlane, groundPlane }, index): Hit[] => {
      const quarterMm = results.antennas?.antennas[index]?.quarterWaveMm;
      if (
        !needsGroundPlane ||
        quarterMm === undefined ||
        (groundPlane && isAtLeast(groundPlane.leastRadiusMm, quarterMm))
      )
        return [];
      const radiusMm = groundPlane?.leastRadiusMm ?? 0;
      const [radiusText, quarterText] = say.apart('arm', radiusMm, quarterMm);
      return [
        {
          path: ['antennas', 'items', index, 'groundPlane'],
          sentence: groundPlane
            ? say.words`${name}: ground plane ${radiusText} to its nearest edge; a quarter wave is ${quarterText}`
            : say.words`${name}: no ground plane; a quarter wave is ${quarterText}`,
          data: { radiusMm, quarterMm },
        },
      ];
    }),
};
