import { beforeAll, describe, expect, test } from 'vitest';
import demo from '../../../fixtures/visits/nose-wheel-full.json' with { type: 'json' };
import * as pipeline from '../../../worker/core/core.ts';
import { type TestService, testService } from '../service.ts';

const AIRCRAFT = '/v1/aircraft/Q-SLM';
const visit = (name: string): string => `${AIRCRAFT}/visits/${name}`;

interface Finding {
  code: string;
  severity: string;
  pointer: string;
  sentence: string;
  data: Record<string, string>;
}

interface Next {
  pack: string;
  record: { schemaVersion: number; standing: { pack: string; sha256: string } };
  lacks: { pointer: string }[];
  sections: Record<string, unknown>;
  open: { item: string; kind: string }[];
}

/** The demo without its papers: nothing is handed in here. */
const { attachments: _files, ...FULL } = demo;

let service: TestService;

async function kept(name: string, record: object): Promise<Finding[]> {
  const before = await service.call(visit(name));
  const condition = before.ok ? { 'If-Match': before.headers.get('ETag') ?? '' } : { 'If-None-Match': '*' };
  const response = await service.call(visit(name), { method: 'PUT', body: record, headers: condition });
  expect(response.ok, await response.clone().text()).toBe(true);
  return (await response.json<{ findings: Finding[] }>()).findings;
}

async function released(name: string): Promise<Response> {
  const headers = { 'If-Match': (await service.call(`${visit(name)}/assessment`)).headers.get('ETag') ?? '' };
  const body = { by: 'jonas', knowsOfNoHazard: true };
  return service.call(`${visit(name)}/release`, { method: 'POST', body, headers });
}

const next = async (): Promise<Next> => (await service.call(`${AIRCRAFT}/next`)).json<Next>();

/** A tyre change, as the shop writes it. */
export const tyreChange = (standing: object) => ({
  schemaVersion: 3,
  standing,
  visit: {
    arrivedAt: '2026-11-20T09:00:00+01:00',
    workEndedAt: '2026-11-20T11:00:00+01:00',
    summary: 'Tyre of the left main wheel replaced.',
  },
  meters: {
    readings: [
      { id: 'airframe', inHours: 1210.1, outHours: 1210.1 },
      { id: 'engine', inHours: 1209.7, outHours: 1209.7 },
      { id: 'propeller', inHours: 617.9, outHours: 617.9 },
    ],
    landings: 2330,
  },
  findings: [
    {
      id: 'F20',
      place: 'Left main wheel',
      text: 'Tyre worn to the cord',
      severity: 'airworthiness',
      disposition: 'rectified',
      action: 'Tyre replaced',
      closedBy: 'mila',
      closedAt: '2026-11-20T10:30:00+01:00',
    },
  ],
  release: { by: 'jonas', statement: 'work-complete', scope: 'Tyre of the left main wheel replaced.' },
});

const SECTIONS = [
  'units',
  'workshop',
  'aircraft',
  'baseline',
  'wiring',
  'electrical',
  'antennas',
  'surveillance',
  'lives',
  'bulletins',
  'meters',
];

describe('a small record', () => {
  beforeAll(async () => {
    service = await testService({ pipeline });
    service.clock.at = Date.parse('2026-11-05T13:20:00Z');
    for (const { id, validUntil, authorisation, ...person } of FULL.people as {
      id: string;
      validUntil?: string;
      authorisation?: string;
    }[])
      await service.call(`/v1/people/${id}`, {
        method: 'PUT',
        body: { ...person, licence: authorisation ?? null, from: null, until: validUntil ?? null },
      });
    await kept('annual', FULL);
    expect((await released('annual')).status).toBe(201);
    service.clock.at = Date.parse('2026-11-20T12:00:00Z');
  });

  test('begins with the standing file', async () => {
    const { pack, record, lacks, sections, open } = await next();
    expect(pack).toBe('Q-SLM-P1-1');
    expect(lacks.map(({ pointer }) => pointer)).toEqual(['/visit', '/people']);
    expect(Object.keys(sections)).toEqual(SECTIONS);
    expect(open.length).toBeGreaterThan(10);
    const findings = await kept('tyre', tyreChange(record.standing));
    expect(findings).toEqual([]);
  });
});
