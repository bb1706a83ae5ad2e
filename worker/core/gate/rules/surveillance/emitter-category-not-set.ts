import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const emitterCategoryNotSet: Rule = {
  code: 'EMITTER_CATEGORY_NOT_SET',
  severity: 'caution',
  meaning: 'A device has no emitter category',
  remedy: m.emitterCategoryNotSet_remedy,
  source: read('FAA on common set-up errors, as summarised'),
  check: ({ visit }) =>
    (visit.surveillance?.devices ?? []).flatMap(({ id, kind, emitterCategory, positionSource }, index): Hit[] => {
      const sendsPosition = kind === 'conspicuity' || (positionSource !== undefined && positionSource !== 'none');
      if (!sendsPosition || (emitterCategory && emitterCategory !== 'not-set')) return [];
      return [
        {
          path: ['surveillance', 'devices', index, 'emitterCategory'],
          sentence: said(m.emitterCategoryNotSet_deviceSendsPositionWithout, { id }),
          data: { device: id },
        },
      ];
    }),
};
