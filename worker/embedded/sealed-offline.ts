import * as pipeline from '../pipeline.ts';

/** A pack made without a service: in the name of the person whom the record asks to release, and without a signature. */
export function sealedOffline(assessed: pipeline.Assessed, at: string, files: pipeline.AttachedFiles) {
  const by = assessed.record.release?.by ?? '';
  const attestation = { by, read: assessed.assessmentSha256, knowsOfNoHazard: true, at };
  const pack = `${assessed.record.aircraft.registration}-P1-1`;
  return pipeline.seal(assessed, attestation, { pack, number: 1, issue: 1, visit: 'offline', before: [] }, files);
}
