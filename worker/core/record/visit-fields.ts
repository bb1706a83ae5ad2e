import { VisitRecord } from './record.ts';
import { type FieldKind, type FieldVisitor, type FieldWalk, type Place, recordIndex } from './record-index.ts';
import type { Visit } from './visit.ts';

const WALKS: { [Kind in FieldKind]: FieldWalk<Kind> } = {
  identifier: recordIndex(VisitRecord, 'identifier'),
  person: recordIndex(VisitRecord, 'person'),
  reference: recordIndex(VisitRecord, 'reference'),
  timestamp: recordIndex(VisitRecord, 'timestamp'),
  'past-date': recordIndex(VisitRecord, 'past-date'),
  arm: recordIndex(VisitRecord, 'arm'),
  text: recordIndex(VisitRecord, 'text'),
};

/** Calls the visitor for every field of a kind in a visit. */
export function eachField<Kind extends FieldKind>(visit: Visit, kind: Kind, visitor: FieldVisitor<Kind>): void {
  WALKS[kind](visit, 'calculation', visitor);
}

/** Returns every field of a kind in a visit, in the order of the schema. */
export function fieldsOf<Kind extends FieldKind>(visit: Visit, kind: Kind): Place<Kind>[] {
  const places: Place<Kind>[] = [];
  eachField(visit, kind, (_, place) => places.push(place()));
  return places;
}
