import { ENCODER_TOLERANCE_FT } from '../../calc/surveillance/altimeter-limits.ts';
import type { SurveillanceRecord, SurveillanceResult } from '../../calc/surveillance/results.ts';
import type { Check, LimitCheck } from '../../calc/surveillance/surveillance-result.ts';
import { omissionText } from '../../gate/omission-text.ts';
import type { Tested } from '../../gate/tested-name.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { list, type Message } from '../../text/message.ts';
import type { PackContext } from '../context.ts';
import { itemLabel } from '../item-label.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { checkRows, limitedRows } from './figure-rows.ts';
import { type Column, sectionOf, tableOf } from './table-section.ts';

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
    systems: [
      ...staticSystems.map(({ figures, checks }, index) => {
        const system = record.staticSystems?.[index];
        const caption = fmt.text(m.radioAndSurveillanceRecord_tested, { staticBy: doneBy(system) });
        return sectionOf(headed(context, m.radioAndSurveillanceRecord_staticPressureSystem, system), [
          figuresTable(fmt, caption, figures),
          checksTable(fmt, checks),
        ]);
      }),
      ...pitotSystems.map(({ figures }, index) => {
        const system = record.pitotSystems?.[index];
        const by = doneBy(system);
        const caption = system?.leak
          ? fmt.text(m.radioAndSurveillanceRecord_pitotTested, { by, seconds: fmt.asIs(system.leak.seconds, 1) })
          : fmt.text(m.radioAndSurveillanceRecord_tested, { staticBy: by });
        return sectionOf(headed(context, m.radioAndSurveillanceRecord_pitotSystem, system), [
          figuresTable(fmt, caption, figures),
        ]);
      }),
      ...altimeters.map(({ figures, omissions }, index) => {
        const test = record.altimeters?.[index];
        const caption = fmt.text(m.radioAndSurveillanceRecord_testedFtHysteresisFalling, {
          altimeterTo: fmt.plain(test?.maximumFt ?? 0, 0),
          altimeterBy: doneBy(test),
        });
        const missing = list(omissions.map(omissionText), '; ');
        return sectionOf(
          headed(context, m.radioAndSurveillanceRecord_altimeterTest, test),
          [figuresTable(fmt, caption, figures)],
          omissions.length === 0
            ? []
            : [fmt.text(m.radioAndSurveillanceRecord_notRecordedNotWhole, { omissions: fmt.value(missing) })],
        );
      }),
    ],
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

/** Returns a heading, with name and equipment item if the record has them. */
function headed(context: PackContext, title: Message, { name, item }: Tested = {}): string {
  return [context.fmt.text(title), name, itemLabel(context, item)].filter(Boolean).join(', ');
}

function figuresTable(fmt: Formatter, caption: string, figures: readonly LimitCheck[]): View {
  const columns: Column[] = [
    ['text', fmt.text(m.radioAndSurveillanceRecord_figure)],
    ['num', fmt.text(m.radioAndSurveillanceRecord_working)],
    ['num', fmt.text(m.value)],
    ['text', fmt.text(m.limits)],
    ['text', fmt.text(m.unit)],
    ['text', fmt.text(m.verdict)],
  ];
  return tableOf(caption, columns, limitedRows(fmt, figures, 0).map(Object.values));
}

function checksTable(fmt: Formatter, checks: readonly Check[]): View {
  const columns: Column[] = [
    ['text', fmt.text(m.radioAndSurveillanceRecord_shown)],
    ['text', fmt.text(m.radioAndSurveillanceRecord_appendixE)],
    ['text', fmt.text(m.verdict)],
  ];
  return tableOf(
    fmt.text(m.radioAndSurveillanceRecord_checksWithoutFigure),
    columns,
    checkRows(fmt, checks).map(Object.values),
  );
}
