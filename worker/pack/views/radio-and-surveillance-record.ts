import { addressForms } from '../../calc/surveillance/address.ts';
import type { DeviceResult, SurveillanceRecord, SurveillanceResult } from '../../calc/surveillance/results.ts';
import type { TransponderTest } from '../../calc/surveillance/transponder-checks.ts';
import { printDate, printMoment } from '../../units/calendar.ts';
import { printNumber } from '../../units/rounding.ts';
import type { PackContext } from '../context.ts';
import { DASH, nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { altimetryView } from './altimetry.ts';
import { common, sources } from './common.ts';
import { checkRows, limitedRows } from './figure-rows.ts';

export function radioAndSurveillanceView(context: PackContext): View {
  const { visit, results } = context;
  const record = visit.surveillance;
  const found = results.surveillance;
  if (!record || !found) throw new Error('Cannot fill the radio and surveillance record: the visit has none');
  return {
    ...common(context),
    ...addressView(found),
    devices: record.devices.map((device, index) => deviceRow(device, found.devices[index])),
    ...transponderView(context, record, found),
    ...altimetryView(context, record, found),
    ...radioView(context, record),
    signatures: [signatureOf(visit, record.transponderTest?.by ?? record.encoder?.by, 'Tested by', DASH)],
    ...sources(
      'Limits: 14 CFR 43 Appendix E (static system, altimeter, encoder) and Appendix F (transponder), powers in dBW as printed there; leak of the static system as in 14 CFR 23.1325 before 2017. State block: two open data files that agree; the Annex itself was not read.',
      'A wrong address or identity is seen by others. A conspicuity device is an aid to look-out, not separation.',
    ),
  };
}

function addressView({ forms }: SurveillanceResult): View {
  return {
    hexadecimal: forms?.hexadecimal ?? DASH,
    octal: forms?.octal ?? DASH,
    binary: forms?.binary ?? DASH,
    state: forms?.state ?? 'in no block known here',
    follows: forms?.registration ?? 'no published rule for this block',
  };
}

function deviceRow(
  device: SurveillanceRecord['devices'][number],
  result: DeviceResult | undefined,
): Record<string, string> {
  const hex = (address: number | undefined): string =>
    address === undefined ? DASH : addressForms(address).hexadecimal;
  return {
    id: device.id,
    kind: device.kind,
    item: device.item ?? DASH,
    set: hex(result?.set),
    received: hex(result?.received),
    identity: device.flightIdentitySet ?? DASH,
    category: device.emitterCategory ?? DASH,
    quality:
      device.positionSource === undefined || device.positionSource === 'none'
        ? DASH
        : `${device.sourceIntegrityLevel ?? 0} / ${device.systemDesignAssurance ?? 0}`,
  };
}

function transponderView(
  { visit }: PackContext,
  { transponderTest: test }: SurveillanceRecord,
  { transponder, modeS }: SurveillanceResult,
): View {
  if (!test) return { hasTransponder: false };
  const { testSet } = test;
  return {
    hasTransponder: true,
    testedAt: printMoment(test.at),
    testedBy: nameOf(visit, test.by),
    testSet: `${testSet.serial}, calibration holds until ${printDate(testSet.calibrationDueOn)}${testSet.isPortable ? '; coupled through the air, 3 dB allowed' : ''}`,
    figures: limitedRows(transponder, 1),
    hasModeS: modeS.length > 0,
    modeS: checkRows(modeS),
    options: optionsOf(test),
  };
}

/** What of the class and its options decides which limits hold. */
function optionsOf({ class: transponderClass, hasNarrowFrequency, hasHighPower, modeS }: TransponderTest): string {
  const diversity = modeS?.hasDiversity ? ['two antennas'] : modeS?.hasDiversity === false ? ['one antenna'] : [];
  return [
    transponderClass,
    ...(hasNarrowFrequency ? ['reply frequency within 1 MHz'] : []),
    ...(hasHighPower ? ['high power'] : []),
    ...diversity,
  ].join(', ');
}

function radioView({ visit }: PackContext, { radioChecks = [], interferenceChecked }: SurveillanceRecord): View {
  return {
    hasRadio: radioChecks.length > 0,
    radio: radioChecks.map(({ at, by, with: station, frequencyMhz, readability }) => ({
      at: printMoment(at),
      by: nameOf(visit, by),
      station,
      frequency: printNumber(frequencyMhz, 3),
      readability: `${readability} of 5`,
    })),
    interference: interferenceChecked
      ? 'Checked with everything on and the engine running: nothing disturbs.'
      : 'NOT CHECKED.',
  };
}
