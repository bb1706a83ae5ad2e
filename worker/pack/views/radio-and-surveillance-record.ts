import { addressForms } from '../../calc/surveillance/address.ts';
import type { DeviceResult, SurveillanceRecord, SurveillanceResult } from '../../calc/surveillance/results.ts';
import type { TransponderTest } from '../../calc/surveillance/transponder-checks.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { Printer } from '../../text/print.ts';
import type { PackContext } from '../context.ts';
import { nameOf, type SignatureView, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { altimetryView } from './altimetry.ts';
import { common, sources } from './common.ts';
import { checkRows, limitedRows } from './figure-rows.ts';

export function radioAndSurveillanceView(context: PackContext): View {
  const { visit, results, say } = context;
  const record = visit.surveillance;
  const found = results.surveillance;
  if (!record || !found) throw new Error('Cannot fill the radio and surveillance record: the visit has none');
  return {
    ...common(context),
    ...addressView(context, found),
    devices: record.devices.map((device, index) => deviceRow(context, device, found.devices[index])),
    ...transponderView(context, record, found),
    ...altimetryView(context, record, found),
    ...radioView(context, record),
    signatures: [testedBy(context, record)],
    ...sources(
      say.text(m.radioAndSurveillanceRecord_limits14Cfr43),
      say.text(m.radioAndSurveillanceRecord_wrongAddressIdentitySeen),
    ),
  };
}

/** Who tested, and on which day: the transponder, or else the encoder. */
function testedBy({ visit, say }: PackContext, { transponderTest, encoder }: SurveillanceRecord): SignatureView {
  const test = transponderTest ?? encoder;
  return signatureOf(visit, test?.by, say.text(m.tested), test ? say.day(test.at) : DASH);
}

function addressView({ say }: PackContext, { forms }: SurveillanceResult): View {
  return {
    hexadecimal: forms?.hexadecimal ?? DASH,
    octal: forms?.octal ?? DASH,
    binary: forms?.binary ?? DASH,
    state: forms?.state ?? say.text(m.radioAndSurveillanceRecord_noBlockKnownHere),
    follows: forms?.registration ?? say.text(m.radioAndSurveillanceRecord_noPublishedRuleBlock),
  };
}

function deviceRow(
  { say }: PackContext,
  device: SurveillanceRecord['devices'][number],
  result: DeviceResult | undefined,
): Record<string, string> {
  const hex = (address: number | undefined): string =>
    address === undefined ? DASH : addressForms(address).hexadecimal;
  return {
    id: device.id,
    kind: say.term(device.kind),
    item: device.item ?? DASH,
    set: hex(result?.set),
    received: hex(result?.received),
    identity: device.flightIdentitySet ?? DASH,
    category: device.emitterCategory ? say.term(device.emitterCategory) : DASH,
    quality:
      device.positionSource === undefined || device.positionSource === 'none'
        ? DASH
        : `${device.sourceIntegrityLevel ?? 0} / ${device.systemDesignAssurance ?? 0}`,
  };
}

function transponderView(
  { visit, say }: PackContext,
  { transponderTest: test }: SurveillanceRecord,
  { transponder, modeS }: SurveillanceResult,
): View {
  if (!test) return { hasTransponder: false };
  const { testSet } = test;
  return {
    hasTransponder: true,
    testedAt: say.moment(test.at),
    testedBy: nameOf(visit, test.by),
    testSet: say.text(m.radioAndSurveillanceRecord_calibrationHoldsUntil, {
      serial: testSet.serial,
      calibrationDueOn: say.date(testSet.calibrationDueOn),
      coupledThrough: testSet.isPortable ? say.text(m.radioAndSurveillanceRecord_coupledThroughAir3) : '',
    }),
    figures: limitedRows(say, transponder, 1),
    hasModeS: modeS.length > 0,
    modeS: checkRows(say, modeS),
    options: optionsOf(say, test),
  };
}

/** What of the class and its options decides which limits hold. */
function optionsOf(
  say: Printer,
  { class: transponderClass, hasNarrowFrequency, hasHighPower, modeS }: TransponderTest,
): string {
  const diversity = modeS?.hasDiversity
    ? [say.text(m.radioAndSurveillanceRecord_twoAntennas)]
    : modeS?.hasDiversity === false
      ? [say.text(m.radioAndSurveillanceRecord_oneAntenna)]
      : [];
  return [
    transponderClass,
    ...(hasNarrowFrequency ? [say.text(m.radioAndSurveillanceRecord_replyFrequencyWithin1)] : []),
    ...(hasHighPower ? [say.text(m.radioAndSurveillanceRecord_highPower)] : []),
    ...diversity,
  ].join(', ');
}

function radioView({ visit, say }: PackContext, { radioChecks = [], interferenceChecked }: SurveillanceRecord): View {
  return {
    hasRadio: radioChecks.length > 0,
    radio: radioChecks.map(({ at, by, with: station, frequencyMhz, readability }) => ({
      at: say.moment(at),
      by: nameOf(visit, by),
      station,
      frequency: say.plain(frequencyMhz, 3),
      readability: say.text(m.radioAndSurveillanceRecord_5, { readability }),
    })),
    interference: interferenceChecked
      ? say.text(m.radioAndSurveillanceRecord_checkedEverythingEngineRunning)
      : say.text(m.radioAndSurveillanceRecord_notChecked),
  };
}
