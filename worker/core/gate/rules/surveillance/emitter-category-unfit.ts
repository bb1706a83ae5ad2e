import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

type Category = NonNullable<NonNullable<Visit['surveillance']>['devices'][number]['emitterCategory']>;

const GLIDER: readonly Category[] = ['glider'];
const ROTORCRAFT: readonly Category[] = ['rotorcraft'];
const LIGHT: readonly Category[] = ['light', 'ultralight'];

/** Categories that a class may send; of an unstated class any. */
const SENT: Readonly<Record<string, readonly Category[]>> = {
  'three-axis': LIGHT,
  'weight-shift': LIGHT,
  'powered-parachute': LIGHT,
  glider: GLIDER,
  'self-launching-glider': [...GLIDER, ...LIGHT],
  gyroplane: [...ROTORCRAFT, ...LIGHT],
  helicopter: ROTORCRAFT,
};

export const emitterCategoryUnfit: Rule = {
  code: 'EMITTER_CATEGORY_UNFIT',
  severity: 'caution',
  meaning: 'A device sends a category that does not fit the class of the aircraft, or differs from another device',
  remedy: m.emitterCategoryUnfit_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { devices = [] } = visit.surveillance ?? {};
    const first = devices.find(({ emitterCategory }) => isSet(emitterCategory));
    return hitsIn(['surveillance', 'devices'], devices, ({ id, emitterCategory }) => {
      if (!isSet(emitterCategory)) return undefined;
      const sentence = fault(id, emitterCategory);
      return sentence && { field: 'emitterCategory', sentence, data: { device: id, category: emitterCategory } };
    });

    function fault(id: string, category: Category): Said | undefined {
      const allowed = SENT[visit.aircraft.class];
      if (allowed && category !== 'other' && !allowed.includes(category))
        return said(m.emitterCategoryUnfit_notOfClass, {
          id,
          category: termOf(category),
          class: termOf(visit.aircraft.class),
        });
      return first?.emitterCategory === category
        ? undefined
        : said(m.emitterCategoryUnfit_devicesDiffer, {
            id,
            category: termOf(category),
            other: first?.id ?? '',
            otherCategory: termOf(first?.emitterCategory ?? ''),
          });
    }
  },
};

const isSet = (category: Category | undefined): category is Category =>
  category !== undefined && category !== 'not-set';
