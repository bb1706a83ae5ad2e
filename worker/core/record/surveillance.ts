import type * as z from 'zod';
import type { FieldText } from '../text/field-texts.ts';
import * as m from '../text/generated/messages.ts';
import { AltimeterTest, Encoder, PitotSystem, StaticSystem } from './altimetry.ts';
import { choice, count, flag, identifier, line, list, number, part, person, reference, timestamp } from './field.ts';
import { TransponderTest } from './transponder-test.ts';

const address = (text: FieldText) => line(text, 'F00A31', 24);

export const ReadBack = part('readBack', {
  address: address('readBack_address'),
  flightIdentity: line('readBack_flightIdentity', 'QSLM', 8).optional(),
  at: timestamp('readBack_at', '2026-11-05T09:30:00+01:00', m.surveillance_readBack),
  by: person('readBack_by', 'jonas', m.surveillance_received),
});

export const Device = part('device', {
  id: identifier(['device'], 'device_id', 'transponder'),
  kind: choice('device_kind', ['transponder', 'conspicuity', 'locator'] as const),
  item: reference('equipment-item', 'device_item', 'E33').optional(),
  addressSet: address('device_addressSet').optional(),
  codedBy: choice('device_codedBy', ['address', 'serial'] as const).optional(),
  flightIdentitySet: line('device_flightIdentitySet', 'QSLM', 8).optional(),
  emitterCategory: choice('device_emitterCategory', [
    'light',
    'ultralight',
    'glider',
    'rotorcraft',
    'other',
    'not-set',
  ] as const).optional(),
  positionSource: choice('device_positionSource', ['none', 'certified', 'uncertified'] as const).optional(),
  sourceIntegrityLevel: count('device_sourceIntegrityLevel', 0, { max: 3 }).optional(),
  systemDesignAssurance: count('device_systemDesignAssurance', 0, { max: 3 }).optional(),
  readBack: ReadBack.optional(),
});

export const RadioCheck = part('radioCheck', {
  item: reference('equipment-item', 'radioCheck_item', 'E31').optional(),
  at: timestamp('radioCheck_at', '2026-11-05T13:20:00+01:00', m.surveillance_radioCheck),
  by: person('radioCheck_by', 'mila', m.surveillance_checkedRadio),
  with: line('radioCheck_with', 'Lower Meadow Radio, 4 km'),
  frequencyMhz: number('radioCheck_frequencyMhz', 'MHz', 122.005, { min: 100, max: 500 }),
  readability: count('radioCheck_readability', 5, { min: 1, max: 5 }),
});

export const Surveillance = part('surveillance', {
  devices: list('surveillance_devices', Device, { max: 12 }),
  transponderTest: TransponderTest.optional(),
  encoder: Encoder.optional(),
  altimeters: list('altimeterTest', AltimeterTest, { max: 8 }).optional(),
  staticSystems: list('staticSystem', StaticSystem, { max: 8 }).optional(),
  pitotSystems: list('pitotSystem', PitotSystem, { max: 8 }).optional(),
  radioChecks: list('surveillance_radioChecks', RadioCheck, { max: 20 }).optional(),
  interferenceChecked: flag('surveillance_interferenceChecked', true).optional(),
});
export type Surveillance = z.infer<typeof Surveillance>;

/** Whether a device is a locator that sends its own serial number, not the address of the aircraft. */
export function isSerialCoded({ kind, codedBy }: Pick<z.infer<typeof Device>, 'kind' | 'codedBy'>): boolean {
  return kind === 'locator' && codedBy === 'serial';
}
