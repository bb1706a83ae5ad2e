import * as z from 'zod';
import { openapi } from './openapi.ts';
import { getAircraft, listAircraft, listAircraftPacks, listLedger } from './resources/aircraft.ts';
import { assessRecord } from './resources/assessments.ts';
import { getAttachment, getAttachmentFile, putAttachment } from './resources/attachments.ts';
import { getBaseline, openLinkBaseline } from './resources/baseline.ts';
import { getDue } from './resources/due.ts';
import { patchVisit, putVisit } from './resources/keep-visit.ts';
import { listLinks, makeLink, revokeLink } from './resources/links.ts';
import { openLink, openLinkDocument, openLinkPdf } from './resources/owner-page.ts';
import { openLinkPicture } from './resources/owner-picture.ts';
import { bringBackPackFile, checkPackFiles } from './resources/pack-files.ts';
import {
  getPack,
  getPackAttachment,
  getPackDocuments,
  getPackFacts,
  getPackManifest,
  getPackPdf,
  getPackRecord,
  listPacks,
} from './resources/packs.ts';
import { getPerson, listPeople, putPerson } from './resources/people.ts';
import { releaseVisit } from './resources/release.ts';
import { relistAircraft } from './resources/relisting.ts';
import { bringBlob, restoreLedger } from './resources/restoration.ts';
import { getSealKeys, rotateSealKey, takeOverSealKeys } from './resources/seal-keys.ts';
import { getHealth, getReadiness, getSmallSchema, getVisitSchema } from './resources/service.ts';
import { getNext, getVisitStanding, getWholeRecord, openLinkNext, takeOverStanding } from './resources/standing.ts';
import { verify } from './resources/verifications.ts';
import { getAssessment, getDraftDocument, getDraftDocuments, getDraftPdf } from './resources/visit-pack.ts';
import { getVisit, listVisits } from './resources/visits.ts';
import { withdrawPack } from './resources/withdrawal.ts';
import { createWorkshop, listKeys, makeKey, revokeKey, rotateKey } from './resources/workshops.ts';
import type { Operation, Route } from './route.ts';
import { OPEN_TO_ALL } from './security-headers.ts';

const getOpenapi: Operation = {
  id: 'getOpenapi',
  summary: 'This description',
  answers: { 200: { description: 'OpenAPI 3.1', content: { 'application/json': z.looseObject({}) } } },
  handle() {
    const headers = { 'Content-Type': 'application/json', ...OPEN_TO_ALL };
    return new Response(`${JSON.stringify(openapi(ROUTES), null, 2)}\n`, { headers });
  },
};

const AIRCRAFT = '/v1/aircraft/{registration}';
const VISIT = `${AIRCRAFT}/visits/{visit}`;
const PACK = '/v1/packs/{pack}';

/** All routes: method, path, permission and operation. */
export const ROUTES: readonly Route[] = [
  ['GET', '/healthz', 'public', getHealth],
  ['GET', '/readyz', 'public', getReadiness],
  ['GET', '/v1/openapi.json', 'public', getOpenapi],
  ['GET', '/v1/schema/visit.json', 'public', getVisitSchema],
  ['GET', '/v1/schema/small.json', 'public', getSmallSchema],

  ['POST', '/v1/assessments', 'records', assessRecord],
  ['PUT', '/v1/attachments/{sha256}', 'records', putAttachment],
  ['GET', '/v1/attachments/{sha256}', 'records', getAttachment],
  ['GET', '/v1/attachments/{sha256}/file', 'records', getAttachmentFile],

  ['GET', '/v1/aircraft', 'records', listAircraft],
  ['GET', AIRCRAFT, 'records', getAircraft],
  ['GET', `${AIRCRAFT}/packs`, 'records', listAircraftPacks],
  ['GET', `${AIRCRAFT}/ledger`, 'records', listLedger],
  ['GET', `${AIRCRAFT}/due`, 'records', getDue],
  ['GET', `${AIRCRAFT}/next`, 'records', getNext],
  ['GET', `${AIRCRAFT}/visits`, 'records', listVisits],
  ['GET', VISIT, 'records', getVisit],
  ['PUT', VISIT, 'records', putVisit],
  ['PATCH', VISIT, 'records', patchVisit],
  ['GET', `${VISIT}/record.json`, 'records', getWholeRecord],
  ['GET', `${VISIT}/standing`, 'records', getVisitStanding],
  ['POST', `${VISIT}/standing`, 'records', takeOverStanding],
  ['GET', `${VISIT}/assessment`, 'records', getAssessment],
  ['GET', `${VISIT}/pack.pdf`, 'records', getDraftPdf],
  ['GET', `${VISIT}/documents.json`, 'records', getDraftDocuments],
  ['GET', `${VISIT}/documents/{document}`, 'records', getDraftDocument],
  ['POST', `${VISIT}/release`, 'release', releaseVisit],

  ['GET', '/v1/packs', 'records', listPacks],
  ['GET', PACK, 'records', getPack],
  ['GET', `${PACK}/pack.pdf`, 'records', getPackPdf],
  ['GET', `${PACK}/record.json`, 'records', getPackRecord],
  ['GET', `${PACK}/manifest.json`, 'records', getPackManifest],
  ['GET', `${PACK}/documents.json`, 'records', getPackDocuments],
  ['GET', `${PACK}/facts.json`, 'records', getPackFacts],
  ['GET', `${PACK}/attachments/{sha256}`, 'records', getPackAttachment],
  ['GET', `${PACK}/files`, 'records', checkPackFiles],
  ['PUT', `${PACK}/files/{sha256}`, 'admin', bringBackPackFile],
  ['POST', `${PACK}/withdrawal`, 'release', withdrawPack],
  ['GET', `${PACK}/baseline.json`, 'records', getBaseline],
  ['GET', `${PACK}/links`, 'links', listLinks],
  ['POST', `${PACK}/links`, 'links', makeLink],
  ['DELETE', `${PACK}/links/{link}`, 'links', revokeLink],

  ['POST', '/v1/verifications', 'public', verify],

  ['GET', '/p/{token}', 'public', openLink],
  ['GET', '/p/{token}/pack.pdf', 'public', openLinkPdf],
  ['GET', '/p/{token}/baseline.json', 'public', openLinkBaseline],
  ['GET', '/p/{token}/next', 'public', openLinkNext],
  ['GET', '/p/{token}/documents/{document}', 'public', openLinkDocument],
  ['GET', '/p/{token}/documents/attachments/{sha256}', 'public', openLinkPicture],

  ['POST', '/v1/workshops', 'deployment', createWorkshop],
  ['GET', '/v1/workshops/{workshop}/keys.json', 'public', getSealKeys],
  ['POST', '/v1/seal-keys', 'admin', rotateSealKey],
  ['POST', '/v1/seal-keys/retired', 'admin', takeOverSealKeys],
  ['PUT', `${AIRCRAFT}/restoration/blobs/{sha256}`, 'admin', bringBlob],
  ['PUT', `${AIRCRAFT}/restoration`, 'admin', restoreLedger],
  ['POST', `${AIRCRAFT}/relisting`, 'admin', relistAircraft],
  ['GET', '/v1/people', 'records', listPeople],
  ['GET', '/v1/people/{person}', 'records', getPerson],
  ['PUT', '/v1/people/{person}', 'admin', putPerson],
  ['GET', '/v1/keys', 'admin', listKeys],
  ['POST', '/v1/keys', 'admin', makeKey],
  ['POST', '/v1/keys/{key}/rotation', 'admin', rotateKey],
  ['DELETE', '/v1/keys/{key}', 'admin', revokeKey],
];
