import type { Visit } from '../../record/visit.ts';
import {
  AFTER_EFFECT_LIMIT_FT,
  BAROMETRIC_TOLERANCE_FT,
  barometricDifferenceFt,
  barometricSettingsHpa,
  CASE_LEAK_LIMIT_FT,
  frictionAltitudesFt,
  frictionToleranceFt,
  HYSTERESIS_TOLERANCE_FT,
  scaleAltitudesFt,
  scaleToleranceFt,
} from './altimeter-limits.ts';
import { limited, limitedDifference } from './limited.ts';
import type { LimitCheck, MissingItem } from './surveillance-result.ts';

export type { MissingItem } from './surveillance-result.ts';

export type AltimeterTest = NonNullable<NonNullable<Visit['surveillance']>['altimeters']>[number];
type Hysteresis = NonNullable<AltimeterTest['hysteresis']>;

const HYSTERESIS_POINTS = [
  ['halfway', 'hysteresis-50'],
  ['twoFifths', 'hysteresis-40'],
] as const satisfies [keyof Hysteresis, LimitCheck['figure']][];
/** Max. difference at which an altitude, or a pressure, belongs to a row of a table: it rounds to it. */
const SAME_ALTITUDE_FT = 0.5;
const SAME_PRESSURE_HPA = 0.5;

/**
 * Returns the figures of an altimeter test with their limits, in the order of the regulation.
 *
 * @source 14 CFR 43 Appendix E (b)(1)(i) to (vi) and tables I to IV
 */
export function altimeterFigures(test: AltimeterTest): LimitCheck[] {
  const { scale, hysteresis, afterEffectFt, friction = [], caseLeakFt, barometric } = test;
  return [
    ...scale.map(({ trueFt, readFt }) => ({
      ...limitedDifference('scale-error', { read: readFt, against: trueFt }, 'ft', scaleToleranceFt(trueFt)),
      at: { value: trueFt, unit: 'ft' },
    })),
    ...(hysteresis ? hysteresisFigures(hysteresis) : []),
    ...(afterEffectFt === undefined
      ? []
      : [limited('after-effect', afterEffectFt, 'ft', { most: AFTER_EFFECT_LIMIT_FT })]),
    ...friction.map(({ altitudeFt, changeFt }) => {
      const toleranceFt = frictionToleranceFt(altitudeFt);
      const figure = limited('friction', changeFt, 'ft', { least: -toleranceFt, most: toleranceFt });
      return { ...figure, at: { value: altitudeFt, unit: 'ft' } };
    }),
    ...(caseLeakFt === undefined ? [] : [limited('case-leak', caseLeakFt, 'ft', { most: CASE_LEAK_LIMIT_FT })]),
    ...(barometric?.points ?? []).map(({ settingHpa, differenceFt }) => {
      const terms = { read: differenceFt, against: barometricDifferenceFt(settingHpa) };
      const figure = limitedDifference('barometric-scale', terms, 'ft', BAROMETRIC_TOLERANCE_FT);
      return { ...figure, at: { value: settingHpa, unit: 'hPa' } };
    }),
  ];
}

function hysteresisFigures(hysteresis: Hysteresis): LimitCheck[] {
  return HYSTERESIS_POINTS.map(([point, figure]) => {
    const { risingFt, fallingFt } = hysteresis[point];
    return limitedDifference(figure, { read: fallingFt, against: risingFt }, 'ft', HYSTERESIS_TOLERANCE_FT);
  });
}

/** Returns the items that Appendix E (b)(1) requires up to the maximum altitude of the test, and that are not in the record. */
export function altimeterOmissions(test: AltimeterTest): MissingItem[] {
  const { maximumFt, scale, hysteresis, afterEffectFt, friction = [], caseLeakFt, barometric } = test;
  const scaleFt = scale.map(({ trueFt }) => trueFt);
  const frictionFt = friction.map(({ altitudeFt }) => altitudeFt);
  const setHpa = (barometric?.points ?? []).map(({ settingHpa }) => settingHpa);
  const askedHpa = barometric ? barometricSettingsHpa(barometric) : [];
  const none = (figure: MissingItem['figure'], isThere: boolean): MissingItem[] =>
    isThere ? [] : [{ figure, at: [], unit: '' }];
  return [
    ...missingAt('scale-error', 'ft', { asked: scaleAltitudesFt(maximumFt), had: scaleFt, within: SAME_ALTITUDE_FT }),
    ...none('hysteresis', hysteresis !== undefined),
    ...none('after-effect', afterEffectFt !== undefined),
    ...missingAt('friction', 'ft', {
      asked: frictionAltitudesFt(maximumFt),
      had: frictionFt,
      within: SAME_ALTITUDE_FT,
    }),
    ...none('case-leak', caseLeakFt !== undefined),
    ...none('barometric-scale', barometric !== undefined),
    ...missingAt('barometric-scale', 'hPa', { asked: askedHpa, had: setHpa, within: SAME_PRESSURE_HPA }),
  ];
}

interface Points {
  asked: readonly number[];
  had: readonly number[];
  within: number;
}

function missingAt(figure: MissingItem['figure'], unit: string, { asked, had, within }: Points): MissingItem[] {
  const at = asked.filter((value) => !had.some((other) => Math.abs(other - value) <= within));
  return at.length > 0 ? [{ figure, at, unit }] : [];
}
