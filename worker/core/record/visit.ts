import { type InCalculationUnits, inCalculationUnits } from './calculation-units.ts';
import { VisitRecord } from './record.ts';

/** A valid record in calculation units: the input of every later stage. The pack prints in its `units`. */
export type Visit = InCalculationUnits<VisitRecord>;

export type Aircraft = Visit['aircraft'];
/** Fields of an aircraft that loading needs. */
export type LoadedAircraft = Pick<
  Aircraft,
  | 'stations'
  | 'loadingLimits'
  | 'envelope'
  | 'envelopeEquations'
  | 'envelopeLowerEdge'
  | 'mac'
  | 'maximumMassKg'
  | 'maximumZeroFuelMassKg'
  | 'maximumLandingMassKg'
  | 'maximumMassWithExternalLoadKg'
  | 'minimumMassKg'
  | 'lateralEnvelope'
  | 'nonLifting'
>;
export type Configuration = NonNullable<Aircraft['configurations']>[number];
export type Station = Aircraft['stations'][number];
export type LoadStation = Extract<Station, { minimumMassKg?: number | undefined; maximumMassKg: number }>;
export type FuelStation = Extract<Station, { unusableL: number }>;
export type WaterStation = Extract<Station, { kind: 'water' }>;
export type TankStation = FuelStation | WaterStation;
export type Baseline = NonNullable<Visit['baseline']>;
export type EquipmentItem = NonNullable<Baseline['equipment']>[number];
export type AsFoundLine = NonNullable<Visit['asFound']>[number];
export type Modification = NonNullable<Visit['modifications']>[number];
export type Change = Modification['changes'][number];
export type Opening = NonNullable<Visit['opened']>[number];
export type Occurrence = NonNullable<Visit['occurrences']>[number];
export type NotRequired = NonNullable<Visit['notRequired']>[number];
export type Flight = NonNullable<Visit['flights']>[number];
export type Weighing = NonNullable<Visit['weighing']>;
export type WeighingPoint = Weighing['points'][number];
export type Scale = Weighing['scales'][number];
export type Inspection = NonNullable<Visit['inspection']>;
export type Task = Inspection['tasks'][number];
export type VisitFinding = NonNullable<Visit['findings']>[number];
export type Person = Visit['people'][number];
export type Part = NonNullable<Visit['parts']>[number];
export type Attachment = NonNullable<Visit['attachments']>[number];
export type Job = NonNullable<Visit['worksheet']>[number];
export type Electrical = NonNullable<Visit['electrical']>;
export type Circuit = Electrical['circuits'][number];
export type Load = Electrical['loads'][number];
export type Traction = NonNullable<Electrical['traction']>;
export type Wiring = NonNullable<Visit['wiring']>;
export type Wire = Wiring['wires'][number];
export type WireEnd = Wire['from'];
export type Pin = Wiring['connectors'][number]['pins'][number];
export type FoundWire = NonNullable<Wiring['found']>[number];
export type Antenna = NonNullable<Visit['antennas']>['items'][number];
export type Release = NonNullable<Visit['release']>;

/** Converts a valid record to kg, mm, l. */
export function visitOf(record: VisitRecord): Visit {
  return inCalculationUnits(VisitRecord, record, record.units);
}
