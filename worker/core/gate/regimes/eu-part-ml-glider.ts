import * as m from '../../text/generated/messages.ts';
import { NONE_SET, PRACTICE, read } from '../source.ts';
import { euPartMl } from './eu-part-ml.ts';
import type { Regime } from './regime.ts';

/** European Union: sailplanes and powered sailplanes under Part-ML. NCO.POL.105, on the mass of aeroplanes, is not about them. */
export const euPartMlGlider: Regime = {
  ...euPartMl,
  id: 'eu-part-ml-glider',
  title: m.regime_euPartMlGlider,
  version: '2026-12-01',
  reweighYears: { value: 10, unit: 'years', source: PRACTICE },
  reweighChangeShare: { value: 0.02, unit: 'share of empty mass', source: PRACTICE },
  reweighMacPercent: { value: null, unit: '% MAC', source: NONE_SET },
  negligibleMacPercent: { value: null, unit: '% MAC', source: NONE_SET },
  // The range of occupants to be carried without ballast begins at 70 kg, parachute included.
  soloMassHighKg: { value: 70, unit: 'kg', source: read('CS 22.23(b)') },
  massCapKg: { value: 2000, unit: 'kg', source: read('ML.1(a)(3), 748/2012 art. 1 (ELA2)') },
  massCapRotorcraftKg: { value: null, unit: 'kg', source: NONE_SET },
};
