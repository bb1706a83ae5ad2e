import { ENCODER_TOLERANCE_FT } from '../../calc/surveillance/altimeter-limits.ts';
import type { SurveillanceRecord, SurveillanceResult } from '../../calc/surveillance/results.ts';
import { omissionText } from '../../gate/omission-text.ts';
import type { Tested } from '../../gate/tested-name.ts';
import * as m from '../../text/generated/messages.ts';
import { list } from '../../text/message.ts';
import type { PackContext } from '../context.ts';
import { itemLabel } from '../item-label.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { checkRows, limitedRows } from './figure-rows.ts';

/** Returns static and pitot systems, altimeters and encoder: part of the radio and surveillance record. */
export function altimetryView(
  context: PackContext,
  record: SurveillanceRecord,
  { encoder, altimeters, staticSystems, pitotSystems }: SurveillanceResult,
): View {
  const { visit, fmt } = context;
  const doneBy = (test: { at: string; by: string } | undefined): string =>
    test ? fmt.text(m.by, { at: fmt.timestamp(test.at), visit: nameOf(visit, test.by) }) : '';
  return {
    statics: staticSystems.map(({ figures, checks }, index) => ({
      which: whichOf(context, record.staticSystems?.[index]),
      by: doneBy(record.staticSystems?.[index]),
      figures: limitedRows(fmt, figures, 0),
      checks: checkRows(fmt, checks),
    })),
    pitots: pitotSystems.map(({ figures }, index) => {
      const system = record.pitotSystems?.[index];
      const by = doneBy(system);
      return {
        which: whichOf(context, system),
        caption: system?.leak
          ? fmt.text(m.radioAndSurveillanceRecord_pitotTested, { by, seconds: fmt.asIs(system.leak.seconds, 1) })
          : fmt.text(m.radioAndSurveillanceRecord_tested, { staticBy: by }),
        figures: limitedRows(fmt, figures, 0),
      };
    }),
    altimeters: altimeters.map(({ figures, omissions }, index) => {
      const test = record.altimeters?.[index];
      return {
        which: whichOf(context, test),
        by: doneBy(test),
        to: fmt.plain(test?.maximumFt ?? 0, 0),
        figures: limitedRows(fmt, figures, 0),
        isWhole: omissions.length === 0,
        omissions: fmt.value(list(omissions.map(omissionText), '; ')),
      };
    }),
    hasEncoder: encoder.length > 0,
    encoderBy: doneBy(record.encoder),
    encoder: encoder.map(({ altimeterFt, encoderFt, differenceFt, isWithin, pulses }) => ({
      altimeter: fmt.plain(altimeterFt, 0),
      encoder: fmt.plain(encoderFt, 0),
      difference: isWithin
        ? fmt.signed(differenceFt, 0)
        : fmt.plainApart(differenceFt, ENCODER_TOLERANCE_FT, 0, { signed: true })[0],
      pulses,
      verdict: isWithin ? '✓' : fmt.text(m.outside),
    })),
  };
}

/** Returns name and equipment item for a heading, after a comma; empty if the record has neither. */
function whichOf(context: PackContext, { name, item }: Tested = {}): string {
  const label = [name, itemLabel(context, item)].filter(Boolean).join(', ');
  return label && `, ${label}`;
}
