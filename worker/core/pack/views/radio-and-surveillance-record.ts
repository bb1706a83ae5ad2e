import { addressForms } from '../../calc/surveillance/address.ts';
import type { DeviceResult, SurveillanceRecord, SurveillanceResult } from '../../calc/surveillance/results.ts';
import type { TransponderTest } from '../../calc/surveillance/transponder-checks.ts';
import { isDriven } from '../../record/driven.ts';
import { isSerialCoded } from '../../record/surveillance.ts';
import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { itemLabel } from '../item-label.ts';
import { nameOf, type SignatureView, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { altimetryView } from './altimetry.ts';
import { common, sources } from './common.ts';
import { checkRows, limitedRows } from './figure-rows.ts';

export function radioAndSurveillanceView(context: PackContext): View {
  const { visit, results, fmt } = context;
  const record = visit.surveillance;
  const found = results.surveillance;
  if (!record || !found) throw new Error('Cannot fill the radio and surveillance record: the visit has none');
  return {
    ...common(context),
    ...accepted(context, '/surveillance'),
    // A record of radio checks or of altimetry only has no transmitter of an address.
    hasAddress: found.forms !== undefined || record.devices.length > 0,
    ...addressView(context, found),
    devices: record.devices.map((device, index) => deviceRow(context, device, found.devices[index])),
    ...transponderView(context, record, found),
    ...altimetryView(context, record, found),
    ...radioView(context, record),
    signatures: [testedBy(context, record)],
    ...sources(
      fmt.text(m.radioAndSurveillanceRecord_limits14Cfr43),
      fmt.text(m.radioAndSurveillanceRecord_wrongAddressIdentitySeen),
    ),
  };
}

/** Returns person and date of the test: of the transponder, or else of the first other test, or of the last radio check. */
function testedBy({ visit, fmt }: PackContext, record: SurveillanceRecord): SignatureView {
  const { transponderTest, encoder, altimeters = [], staticSystems = [], pitotSystems = [], radioChecks = [] } = record;
  const test = transponderTest ?? encoder ?? altimeters[0] ?? staticSystems[0] ?? pitotSystems[0] ?? radioChecks.at(-1);
  return signatureOf({ visit, fmt }, test?.by, fmt.text(m.tested), test ? fmt.day(test.at) : DASH);
}

function addressView({ fmt }: PackContext, { forms }: SurveillanceResult): View {
  return {
    hexadecimal: forms?.hexadecimal ?? DASH,
    octal: forms?.octal ?? DASH,
    binary: forms?.binary ?? DASH,
    state: forms?.state ?? fmt.text(m.radioAndSurveillanceRecord_noBlockKnownHere),
    follows: forms?.registration ?? fmt.text(m.radioAndSurveillanceRecord_noPublishedRuleBlock),
  };
}

function deviceRow(
  { fmt }: PackContext,
  device: SurveillanceRecord['devices'][number],
  result: DeviceResult | undefined,
): Record<string, string> {
  const hex = (address: number | undefined): string =>
    address === undefined ? DASH : addressForms(address).hexadecimal;
  return {
    id: device.id,
    kind: device.codedBy ? `${fmt.term(device.kind)}, ${fmt.term(device.codedBy)}` : fmt.term(device.kind),
    item: device.item ?? DASH,
    set: isSerialCoded(device) ? (device.addressSet ?? DASH) : hex(result?.set),
    received: isSerialCoded(device) ? (device.readBack?.address ?? DASH) : hex(result?.received),
    identity: device.flightIdentitySet ?? DASH,
    category: device.emitterCategory ? fmt.term(device.emitterCategory) : DASH,
    quality:
      device.positionSource === undefined || device.positionSource === 'none'
        ? DASH
        : `${device.sourceIntegrityLevel ?? 0} / ${device.systemDesignAssurance ?? 0}`,
  };
}

function transponderView(
  { visit, fmt }: PackContext,
  { transponderTest: test }: SurveillanceRecord,
  { transponder, modeS }: SurveillanceResult,
): View {
  if (!test) return { hasTransponder: false };
  const { testSet } = test;
  return {
    hasTransponder: true,
    testedAt: fmt.timestamp(test.at),
    testedBy: nameOf(visit, test.by),
    testSet: fmt.text(m.radioAndSurveillanceRecord_calibrationHoldsUntil, {
      serial: testSet.serial,
      calibrationDueOn: fmt.date(testSet.calibrationDueOn),
      coupledThrough: testSet.isPortable ? fmt.text(m.radioAndSurveillanceRecord_coupledThroughAir3) : '',
    }),
    figures: limitedRows(fmt, transponder, 1),
    hasModeS: modeS.length > 0,
    modeS: checkRows(fmt, modeS),
    options: optionsOf(fmt, test),
  };
}

/** Returns the class and the options that decide which limits apply. */
function optionsOf(
  fmt: Formatter,
  { class: transponderClass, hasNarrowFrequency, hasHighPower, modeS }: TransponderTest,
): string {
  const diversity = modeS?.hasDiversity
    ? [fmt.text(m.radioAndSurveillanceRecord_twoAntennas)]
    : modeS?.hasDiversity === false
      ? [fmt.text(m.radioAndSurveillanceRecord_oneAntenna)]
      : [];
  return [
    transponderClass,
    ...(hasNarrowFrequency ? [fmt.text(m.radioAndSurveillanceRecord_replyFrequencyWithin1)] : []),
    ...(hasHighPower ? [fmt.text(m.radioAndSurveillanceRecord_highPower)] : []),
    ...diversity,
  ].join(', ');
}

function radioView(context: PackContext, { radioChecks = [], interferenceChecked }: SurveillanceRecord): View {
  const { visit, fmt } = context;
  return {
    hasRadio: radioChecks.length > 0,
    radioCaption: fmt.text(
      isDriven(visit.aircraft) ? m.radioAndSurveillanceRecord_twoWayEngineRunning : m.radioAndSurveillanceRecord_twoWay,
    ),
    radio: radioChecks.map(({ item, at, by, with: station, frequencyMhz, readability }) => ({
      item: itemLabel(context, item) || DASH,
      at: fmt.timestamp(at),
      by: nameOf(visit, by),
      station,
      frequency: fmt.plain(frequencyMhz, 3),
      readability: fmt.text(m.radioAndSurveillanceRecord_5, { readability }),
    })),
    interference: interferenceChecked
      ? fmt.text(
          isDriven(visit.aircraft)
            ? m.radioAndSurveillanceRecord_checkedEverythingEngineRunning
            : m.radioAndSurveillanceRecord_checkedEverythingOn,
        )
      : fmt.text(m.radioAndSurveillanceRecord_notChecked),
  };
}
