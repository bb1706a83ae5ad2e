import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { memory, type Rule } from '../../rule.ts';

export const emitterCategoryNotSet: Rule = {
  code: 'EMITTER_CATEGORY_NOT_SET',
  severity: 'caution',
  meaning: 'A device has no emitter category',
  remedy: m.emitterCategoryNotSet_remedy,
  source: memory('FAA on common set-up errors'),
  check: ({ visit }) =>
    hitsIn(['surveillance', 'devices'], visit.surveillance?.devices, (device) => {
      const { id, kind, emitterCategory = 'not-set', positionSource = 'none' } = device;
      const sendsPosition = kind === 'conspicuity' || positionSource !== 'none';
      if (!sendsPosition || emitterCategory !== 'not-set') return undefined;
      return {
        field: 'emitterCategory',
        sentence: said(m.emitterCategoryNotSet_deviceSendsPositionWithout, { id }),
        data: { device: id },
      };
    }),
};
