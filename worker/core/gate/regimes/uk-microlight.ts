import { memory, read } from '../source.ts';
import { generic } from './generic.ts';
import type { Regime } from './regime.ts';

/** United Kingdom: permit aircraft and microlights. The permit and its limits come first. */
export const ukMicrolight: Regime = {
  ...generic,
  id: 'uk-microlight',
  title: 'United Kingdom, microlight on a permit to fly (ANO 2016)',
  version: '2026-11-01',
  statements: [
    {
      id: 'work-complete',
      title: 'Permit maintenance release',
      covers: 'work',
      text: 'The work recorded in this pack was completed on the date stated by the persons named, to the data named. Work left unfinished and the limits that follow are stated. The person who signs knows of no non-compliance that endangers flight safety.',
      source: read('own wording; contents of ANO 2016 art. 47 (edition of 2019); permit wording was not read'),
    },
    {
      id: 'weighing-only',
      title: 'Weighing',
      covers: 'weighing',
      text: 'The aircraft was weighed as recorded in this pack, and the weight schedule in it replaces the earlier one, which is kept. The person who signs knows of no non-compliance that endangers flight safety.',
      source: memory('own wording; weight schedule kept six months after the next weighing'),
    },
  ],
  approvalNeeded: {
    value: ['major', 'minor', 'standard-change', 'maker-approved'],
    unit: 'classes',
    source: memory('modification approval by the authority or its delegate'),
  },
  secondInspection: {
    value: true,
    unit: 'yes or no',
    source: memory('duplicate inspection of controls and vital points, customary and national'),
  },
  reweighYears: {
    value: null,
    unit: 'years',
    source: read('the five-year reweighing of microlights is being removed'),
  },
  negligibleMassKg: { value: null, unit: 'kg', source: memory('none is stated') },
  minimumPayload: {
    value: { perSeatKg: 86, fuelHours: 1 },
    unit: 'kg and h',
    source: read(
      'BCAR Section S, payload of 86 kg a seat and one hour of fuel, read second-hand; 100 kg a seat in the 600 kg class',
    ),
  },
  massCapKg: {
    value: 600,
    unit: 'kg',
    source: memory('SI 2021/879 art. 10, microlight landplane with two seats'),
  },
  massCapWaterKg: {
    value: 650,
    unit: 'kg',
    source: memory('SI 2021/879 art. 10, microlight amphibian or floatplane'),
  },
};
