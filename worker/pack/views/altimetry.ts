import type { SurveillanceRecord, SurveillanceResult } from '../../calc/surveillance/results.ts';
import { omissionText } from '../../gate/omission-text.ts';
import { printMoment } from '../../units/calendar.ts';
import { printNumber, printSigned } from '../../units/rounding.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { checkRows, limitedRows } from './figure-rows.ts';

/** Static system, altimeter and encoder: part of the radio and surveillance record. */
export function altimetryView(
  { visit }: PackContext,
  record: SurveillanceRecord,
  { encoder, altimeter, altimeterOmissions, staticSystem }: SurveillanceResult,
): View {
  const doneBy = (test: { at: string; by: string } | undefined): string =>
    test ? `${printMoment(test.at)} by ${nameOf(visit, test.by)}` : '';
  return {
    hasStatic: staticSystem !== undefined,
    staticBy: doneBy(record.staticSystem),
    static: limitedRows(staticSystem?.figures ?? [], 0),
    staticChecks: checkRows(staticSystem?.checks ?? []),
    hasAltimeter: altimeter.length > 0,
    altimeterBy: doneBy(record.altimeter),
    altimeterTo: printNumber(record.altimeter?.maximumFt ?? 0, 0),
    altimeter: limitedRows(altimeter, 0),
    isWhole: altimeterOmissions.length === 0,
    omissions: altimeterOmissions.map(omissionText).join('; '),
    hasEncoder: encoder.length > 0,
    encoderBy: doneBy(record.encoder),
    encoder: encoder.map(({ altimeterFt, encoderFt, differenceFt, isWithin, pulses }) => ({
      altimeter: printNumber(altimeterFt, 0),
      encoder: printNumber(encoderFt, 0),
      difference: printSigned(differenceFt, 0),
      pulses,
      verdict: isWithin ? '✓' : 'OUTSIDE',
    })),
  };
}
