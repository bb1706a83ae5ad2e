import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { isInRange } from '../../within.ts';

/** Hours that the full tanks of a light aircraft usually last. */
const USUAL = { from: 1, to: 10 } as const;

export const enduranceUnusual: Rule = {
  code: 'ENDURANCE_UNUSUAL',
  severity: 'caution',
  meaning: 'Full tanks would last less than 1 h or more than 10 h at the fuel flow of the record',
  remedy: m.enduranceUnusual_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft } }) => {
    const flowLPerH = aircraft.engine?.fuelFlowLPerH;
    const usableL = aircraft.stations.reduce(
      (sum, station) => sum + (station.kind === 'fuel' ? station.capacityL - station.unusableL : 0),
      0,
    );
    if (flowLPerH === undefined || usableL <= 0 || isInRange(usableL / flowLPerH, USUAL)) return undefined;
    const hours = usableL / flowLPerH;
    return {
      path: ['aircraft', 'engine', 'fuelFlow'],
      sentence: said(m.enduranceUnusual_hours, {
        usable: figure.measure('volume', usableL),
        flow: figure.measure('flow', flowLPerH),
        hours: figure.plain(hours, 1),
        from: USUAL.from,
        to: USUAL.to,
      }),
      data: { usableL, flowLPerH, hours },
    };
  },
};
