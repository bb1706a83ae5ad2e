import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const weighedOutdoorsOnce: Rule = {
  code: 'WEIGHED_OUTDOORS_ONCE',
  severity: 'blocks',
  meaning: 'Outdoors a point was read only once',
  remedy: m.weighedOutdoorsOnce_remedy,
  source: read('CAP 562 weighing leaflet (outdoors several readings at each point)'),
  check: ({ visit: { weighing } }) => {
    if (weighing?.indoors !== false) return undefined;
    return hitsIn(['weighing', 'points'], weighing.points, ({ id, name, readingsKg }) =>
      readingsKg.length === 1
        ? { field: 'readings', sentence: said(m.weighedOutdoorsOnce_point, { name }), data: { point: id } }
        : undefined,
    );
  },
};
