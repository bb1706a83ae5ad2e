import * as m from '../../text/generated/messages.ts';
import { NONE_SET, read } from '../source.ts';
import { generic } from './generic.ts';
import type { Regime } from './regime.ts';

/** European Union: Part-ML. National ultralights and most amateur-built aircraft are outside it (Annex I to Regulation 2018/1139). */
export const euPartMl: Regime = {
  ...generic,
  id: 'eu-part-ml',
  title: m.regime_euPartMl,
  version: '2026-12-01',
  statements: [
    {
      id: 'work-complete',
      title: m.statement_releaseToService,
      covers: ['work', 'inspection', 'weighing'],
      wording: m.statement_releaseToServiceText,
      // The sentence of Part-M, with its own name of the part.
      ruleWording:
        'Certifies that the work specified except as otherwise specified was carried out in accordance with Part-M and in respect to that work the aircraft is considered ready for release to service',
      source: read('AMC M.A.801(e), ML.A.801(a)'),
    },
    {
      id: 'weighing-only',
      title: m.statement_weighing,
      covers: ['weighing'],
      wording: m.statement_weighingReadyText,
      source: read('ML.A.903(a)(9)'),
    },
  ],
  approvalNeeded: {
    value: ['major', 'minor', 'standard-change', 'maker-approved'],
    unit: 'classes',
    source: read('M.A.304, ML.A.903(a)(6), CS STAN.05'),
  },
  secondInspection: { value: true, unit: 'yes or no', source: read('AMC4 145.A.48(b), AMC1 CAO.A.060(h)') },
  reweighYears: { value: null, unit: 'years', source: read('NCO.POL.105') },
  // The guidance takes the share of the maximum landing mass; that of the empty mass is stricter.
  reweighChangeShare: { value: 0.005, unit: 'share of empty mass', source: read('GM1 NCO.POL.105') },
  reweighMacPercent: { value: 0.5, unit: '% MAC', source: read('GM1 NCO.POL.105') },
  negligibleMassKg: { value: null, unit: 'kg', source: NONE_SET },
  negligibleMacPercent: { value: 0.5, unit: '% MAC', source: read('GM1 NCO.POL.105') },
  massCapKg: { value: 2730, unit: 'kg', source: read('ML.1(a)(1)') },
  massCapRotorcraftKg: { value: 1200, unit: 'kg', source: read('ML.1(a)(2)') },
};
