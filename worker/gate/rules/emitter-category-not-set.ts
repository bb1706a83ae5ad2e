import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const emitterCategoryNotSet: Rule = {
  code: 'EMITTER_CATEGORY_NOT_SET',
  severity: 'caution',
  meaning: 'A device has no emitter category',
  remedy: phrase`Set it; it is one of the commonest errors of the first fit`,
  source: read('FAA on common set-up errors, as summarised'),
  check: ({ visit, say }) =>
    (visit.surveillance?.devices ?? []).flatMap(({ id, kind, emitterCategory, positionSource }, index): Hit[] => {
      const sendsPosition = kind === 'conspicuity' || (positionSource !== undefined && positionSource !== 'none');
      if (!sendsPosition || (emitterCategory && emitterCategory !== 'not-set')) return [];
      return [
        {
          path: ['surveillance', 'devices', index, 'emitterCategory'],
          sentence: say.words`Device ${id} sends its position without an emitter category`,
          data: { device: id },
        },
      ];
    }),
};
