import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { memory, type Rule } from '../../rule.ts';

export const plateSmall: Rule = {
  code: 'PLATE_SMALL',
  severity: 'caution',
  meaning: 'A ground plane is missing, or smaller than a quarter wave around the antenna',
  remedy: m.plateSmall_remedy,
  source: memory('AC 43.13-2B ch. 3'),
  check: ({ visit, results }) =>
    hitsIn(['antennas', 'items'], visit.antennas?.items, ({ name, needsGroundPlane, groundPlane }, index) => {
      const quarterMm = results.antennas?.antennas[index]?.quarterWaveMm;
      if (
        !needsGroundPlane ||
        quarterMm === undefined ||
        (groundPlane && isAtLeast(groundPlane.minimumRadiusMm, quarterMm))
      )
        return undefined;
      const radiusMm = groundPlane?.minimumRadiusMm ?? 0;
      const [radiusText, quarterText] = figure.apart('arm', radiusMm, quarterMm);
      return {
        field: 'groundPlane',
        sentence: groundPlane
          ? said(m.plateSmall_groundPlaneNearestEdge, { name, radius: radiusText, quarter: quarterText })
          : said(m.plateSmall_noGroundPlaneQuarter, { name, quarter: quarterText }),
        data: { radiusMm, quarterMm },
      };
    }),
};
