import type { MissingItem, TransponderOmission } from '../calc/surveillance/surveillance-result.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { list, type Message, said, type Value } from '../text/message.ts';

/** Names of the parts of an altimeter test in a sentence. */
const PARTS: Readonly<Record<MissingItem['figure'], Message>> = {
  'scale-error': m.omissionText_scaleError,
  hysteresis: m.omissionText_hysteresis,
  'after-effect': m.omissionText_afterEffect,
  friction: m.omissionText_friction,
  'case-leak': m.omissionText_caseLeak,
  'barometric-scale': m.omissionText_barometricScale,
};

const OF_TRANSPONDER: Readonly<Record<TransponderOmission, Message>> = {
  'sensitivity-by-mode': m.omissionText_sensitivityMode3Mode,
  diversity: m.omissionText_whetherDiversity,
  'antenna-isolation': m.omissionText_isolationBetweenAntennas,
};

/** Name of a missing part of an altimeter test, without its points. */
export function omittedPart({ figure }: Pick<MissingItem, 'figure'>): Value {
  return said(PARTS[figure]);
}

/** Name of a missing figure of a transponder test. */
export function transponderOmission(omission: TransponderOmission): Value {
  return said(OF_TRANSPONDER[omission]);
}

/**
 * Name of a missing part of an altimeter test, with its points.
 *
 * @example omissionText({ figure: 'friction', at: [1000, 2000], unit: 'ft' })  // 'friction at 1000, 2000 ft'
 */
export function omissionText(omission: MissingItem): Value {
  const part = omittedPart(omission);
  const { at, unit } = omission;
  return at.length === 0 ? part : said(m.at, { name: part, at: list(at.map((value) => figure.plain(value, 0))), unit });
}
