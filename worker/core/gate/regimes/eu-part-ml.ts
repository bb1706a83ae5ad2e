import { memory, read } from '../source.ts';
import { generic } from './generic.ts';
import type { Regime } from './regime.ts';

/** European Union: Part-ML. National ultralights and most amateur-built aircraft are outside it (Annex I to Regulation 2018/1139). */
export const euPartMl: Regime = {
  ...generic,
  id: 'eu-part-ml',
  title: 'European Union, Part-ML (Regulation 1321/2014 Annex Vb)',
  version: '2026-11-01',
  statements: [
    {
      id: 'work-complete',
      title: 'Certificate of release to service',
      covers: 'work',
      text: 'The work identified in this pack, except as otherwise specified under its limitations, was carried out in accordance with Part-ML, and in respect to that work the aircraft is considered ready for release to service.',
      source: read('own wording after the sense of AMC M.A.801, a sister text; the wording of ML.A.801 was not read'),
    },
    {
      id: 'weighing-only',
      title: 'Weighing',
      covers: 'weighing',
      text: 'The aircraft was weighed as recorded in this pack, and the mass and balance record in it replaces the earlier one. In respect to that work the aircraft is considered ready for release to service.',
      source: memory('own wording; ML.A.305(d), mass and balance in the records'),
    },
  ],
  approvalNeeded: {
    value: ['major', 'minor', 'standard-change', 'maker-approved'],
    unit: 'classes',
    source: read(
      'CS-STAN: standard changes without approval but by their revision; other changes approved (the reference names either)',
    ),
  },
  secondInspection: {
    value: true,
    unit: 'yes or no',
    source: read('145.A.48 and AMC, error-capturing for critical tasks; ML.A.402(b) was not read'),
  },
  reweighYears: { value: null, unit: 'years', source: memory('by maintenance programme or operating rule') },
  reweighChangeShare: {
    value: 0.005,
    unit: 'share of empty mass',
    source: read(
      'guidance: mass and balance issued anew above 0.5 % of maximum landing mass; taken here on the empty mass, which is stricter',
    ),
  },
  reweighMacPercent: { value: 0.5, unit: '% MAC', source: read('GM1 NCO.POL.105, aeroplanes: above 0.5 % MAC') },
  negligibleMassKg: { value: null, unit: 'kg', source: memory('none is stated') },
  negligibleMacPercent: { value: 0.5, unit: '% MAC', source: read('guidance: above 0.5 % MAC a new record is issued') },
  minimumPayload: { value: null, unit: 'kg and h', source: memory('none is set') },
  massCapKg: { value: 2730, unit: 'kg', source: read('ML.1(a), aeroplanes') },
  massCapRotorcraftKg: { value: 1200, unit: 'kg', source: read('ML.1(a), rotorcraft') },
};
