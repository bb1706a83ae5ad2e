import type * as z from 'zod';
import { choice, date, identifier, line, list, part } from './field.ts';

/** Kinds of document that an aircraft carries or must have. */
export const CERTIFICATES = [
  'permit-to-fly',
  'airworthiness-certificate',
  'airworthiness-review',
  'registration',
  'radio-licence',
  'noise-certificate',
  'insurance',
  'other',
] as const;
export type CertificateKind = (typeof CERTIFICATES)[number];

export const AircraftCertificate = part('aircraftCertificate', {
  id: identifier(['certificate'], 'aircraftCertificate_id', 'permit'),
  kind: choice('aircraftCertificate_kind', CERTIFICATES),
  title: line('aircraftCertificate_title', 'Permit to fly', 80).optional(),
  number: line('aircraftCertificate_number', 'PTF-2216', 60).optional(),
  issuer: line('aircraftCertificate_issuer', 'Light Aviation Authority', 80).optional(),
  validUntil: date('aircraftCertificate_validUntil', '2027-06-30').optional(),
});
export type AircraftCertificate = z.infer<typeof AircraftCertificate>;

/** Documents of the aircraft, as seen at this visit. */
export const Certificates = list('certificates', AircraftCertificate, { max: 30 });
