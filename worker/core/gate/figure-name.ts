import type { Figure, LimitCheck } from '../calc/surveillance/surveillance-result.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { type Message, said, type Value } from '../text/message.ts';

/** Names of test figures in the rows of a table. */
const FIGURE_NAMES: Readonly<Record<Figure, Message>> = {
  'scale-error': m.figureName_scaleError,
  'hysteresis-50': m.figureName_hysteresis50,
  'hysteresis-40': m.figureName_hysteresis40,
  'after-effect': m.figureName_afterEffect,
  friction: m.figureName_friction,
  'case-leak': m.figureName_caseLeak,
  'barometric-scale': m.figureName_barometricScale,
  'raised-above-aerodrome': m.figureName_raisedAboveAerodrome,
  'loss-in-one-minute': m.figureName_lossOneMinute,
  'pitot-loss': m.figureName_pitotLoss,
  airspeed: m.figureName_airspeed,
  'reply-frequency': m.figureName_replyFrequency,
  'output-power': m.figureName_peakOutputPower,
  sensitivity: m.figureName_sensitivity,
  'sensitivity-difference': m.figureName_mode3LessMode,
  'sidelobe-replies': m.figureName_repliesP2EqualP1,
  'wanted-replies': m.figureName_repliesP29Db,
  'antenna-isolation': m.figureName_isolationOtherAntenna,
  torque: m.figureName_torque,
  'heading-error': m.figureName_headingError,
  vibration: m.figureName_vibration,
  'track-split': m.figureName_trackSplit,
};

/** Names of static system figures in a sentence, with a small initial letter. */
const IN_SENTENCE: Readonly<Partial<Record<Figure, Message>>> = {
  'raised-above-aerodrome': m.figureName_raisedAboveAerodrome2,
  'loss-in-one-minute': m.figureName_lossOneMinute2,
};

/** Name of a figure in a sentence. */
export function figureInSentence(figure: Figure): Value {
  return said(IN_SENTENCE[figure] ?? FIGURE_NAMES[figure]);
}

/** Name of a figure without the point of measurement. */
export function nameOfFigure(figure: Figure): Value {
  return said(FIGURE_NAMES[figure]);
}

/**
 * Name of a figure with its point of measurement, if it has several.
 *
 * @example figureName({ figure: 'friction', at: { value: 5000, unit: 'ft' } })  // 'Friction at 5000 ft'
 */
export function figureName({ figure: measured, at }: Pick<LimitCheck, 'figure' | 'at'>): Value {
  const name = nameOfFigure(measured);
  return at
    ? said(m.at, { name, at: figure.plain(at.value, Number.isInteger(at.value) ? 0 : 1), unit: at.unit })
    : name;
}
