import * as z from 'zod';
import { fieldText } from '../text/field-texts.ts';
import { Aircraft } from './aircraft.ts';
import { Antennas } from './antennas.ts';
import { AsFound } from './as-found.ts';
import { Attachments } from './attachment.ts';
import { Baseline } from './baseline.ts';
import { Bulletins } from './bulletin.ts';
import { CarriedItems } from './carried.ts';
import { Certificates } from './certificates.ts';
import { Closing } from './closing.ts';
import { Compass } from './compass.ts';
import { Controls } from './control-check.ts';
import { Departure } from './departure.ts';
import { Electrical } from './electrical.ts';
import { EngineRuns } from './engine-run.ts';
import { Flights } from './flight.ts';
import { Inspection } from './inspection.ts';
import { Lives } from './life.ts';
import { Measurements } from './measurements.ts';
import { Meters } from './meters.ts';
import { Modifications } from './modification.ts';
import { NotRequiredList } from './not-required.ts';
import { Occurrences } from './occurrence.ts';
import { OpenedList } from './opened.ts';
import { Parts } from './parts-trace.ts';
import { People } from './people.ts';
import { Release } from './release.ts';
import { SignOffs } from './sign-off.ts';
import { Standing } from './standing.ts';
import { Surveillance } from './surveillance.ts';
import { UnitsPart } from './units.ts';
import { SCHEMA_VERSION } from './upgrades.ts';
import { VisitFindings } from './visit-finding.ts';
import { Weighing } from './weighing.ts';
import { Wiring } from './wiring.ts';
import { Worksheet } from './worksheet.ts';
import { Visit as VisitHeader, Workshop } from './workshop.ts';

// `$schema` is for editors. It is stored and sealed like any field: leaving it out of the digest would give one
// record two texts.

/** Structured record of one workshop visit, as posted: strict, in the units that it declares. */
export const VisitRecord = z
  .strictObject({
    $schema: z
      .string()
      .max(500)
      .optional()
      .meta({
        ...fieldText('visitRecord_schema'),
        examples: ['/v1/schema/visit.json'],
      }),
    schemaVersion: z.literal(SCHEMA_VERSION).meta({
      ...fieldText('visitRecord_schemaVersion'),
      examples: [SCHEMA_VERSION],
    }),
    standing: Standing.optional(),
    units: UnitsPart,
    workshop: Workshop,
    visit: VisitHeader,
    people: People,
    aircraft: Aircraft,
    certificates: Certificates.optional(),
    baseline: Baseline.optional(),
    asFound: AsFound.optional(),
    meters: Meters.optional(),
    worksheet: Worksheet.optional(),
    occurrences: Occurrences.optional(),
    modifications: Modifications.optional(),
    opened: OpenedList.optional(),
    wiring: Wiring.optional(),
    electrical: Electrical.optional(),
    antennas: Antennas.optional(),
    surveillance: Surveillance.optional(),
    compass: Compass.optional(),
    engineRuns: EngineRuns.optional(),
    flights: Flights.optional(),
    measurements: Measurements.optional(),
    controls: Controls.optional(),
    inspection: Inspection.optional(),
    bulletins: Bulletins.optional(),
    lives: Lives.optional(),
    findings: VisitFindings.optional(),
    carried: CarriedItems.optional(),
    parts: Parts.optional(),
    attachments: Attachments.optional(),
    closing: Closing.optional(),
    notRequired: NotRequiredList.optional(),
    weighing: Weighing.optional(),
    departure: Departure.optional(),
    signOffs: SignOffs.optional(),
    release: Release.optional(),
  })
  .meta({ ...fieldText('visitRecord') });
export type VisitRecord = z.infer<typeof VisitRecord>;
