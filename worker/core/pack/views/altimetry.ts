import { ENCODER_TOLERANCE_FT } from '../../calc/surveillance/altimeter-limits.ts';
import type { SurveillanceRecord, SurveillanceResult } from '../../calc/surveillance/results.ts';
import { omissionText } from '../../gate/omission-text.ts';
import * as m from '../../text/generated/messages.ts';
import { list } from '../../text/message.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { checkRows, limitedRows } from './figure-rows.ts';

/** Returns static system, altimeter and encoder: part of the radio and surveillance record. */
export function altimetryView(
  { visit, fmt }: PackContext,
  record: SurveillanceRecord,
  { encoder, altimeter, altimeterOmissions, staticSystem }: SurveillanceResult,
): View {
  const doneBy = (test: { at: string; by: string } | undefined): string =>
    test ? fmt.text(m.by, { at: fmt.timestamp(test.at), visit: nameOf(visit, test.by) }) : '';
  return {
    hasStatic: staticSystem !== undefined,
    staticBy: doneBy(record.staticSystem),
    static: limitedRows(fmt, staticSystem?.figures ?? [], 0),
    staticChecks: checkRows(fmt, staticSystem?.checks ?? []),
    hasAltimeter: altimeter.length > 0,
    altimeterBy: doneBy(record.altimeter),
    altimeterTo: fmt.plain(record.altimeter?.maximumFt ?? 0, 0),
    altimeter: limitedRows(fmt, altimeter, 0),
    isWhole: altimeterOmissions.length === 0,
    omissions: fmt.value(list(altimeterOmissions.map(omissionText), '; ')),
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
