import { recordFormatter } from '../record/record-formatter.ts';
import type { Person, Release } from '../record/visit.ts';
import * as m from '../text/generated/messages.ts';
import { type Said, said } from '../text/message.ts';
import type { Finding } from './finding.ts';
import { type Assessment, isSettled } from './gate.ts';
import type { Statement } from './regimes/regime.ts';
import { PRACTICE } from './source.ts';
import { wordedFinding } from './worded.ts';

/** Act of the releasing person: own name, and the statement that no hazard is known. */
export interface Attestation {
  by: string;
  knowsOfNoHazard: boolean;
  at: string;
}

declare const released: unique symbol;

/** A released visit. Only `releaseVisit` makes one, and only this type can be sealed. */
export interface ReleasedVisit extends Assessment {
  readonly [released]: true;
  release: Release;
  releasedBy: Person;
  statement: Statement;
  /** Further statements, each with the work that it covers. */
  further: readonly { statement: Statement; scope: string }[];
  releasedAt: string;
}

export type ReleaseOutcome = { ok: true; released: ReleasedVisit } | { ok: false; findings: Finding[] };

/** Releases an assessed visit, or lists everything that stops the release. */
export function releaseVisit(assessment: Assessment, { by, knowsOfNoHazard, at }: Attestation): ReleaseOutcome {
  const { visit, regime } = assessment;
  const { release } = visit;
  const fmt = recordFormatter(visit);
  const own = [
    ...(release && by !== release.by ? [otherPerson(by, release.by)] : []),
    ...(knowsOfNoHazard ? [] : [hazardNotDenied()]),
  ];
  const releasedBy = visit.people.find(({ id }) => id === release?.by);
  const statement = regime.statements.find(({ id }) => id === release?.statement);
  const open = [
    ...assessment.findings.filter((finding) => !isSettled(finding)),
    ...own.map((finding) => wordedFinding(finding, fmt)),
  ];
  const further: ReleasedVisit['further'] = (release?.further ?? []).flatMap(({ statement: named, scope }) => {
    const found = regime.statements.find(({ id }) => id === named);
    return found ? [{ statement: found, scope }] : [];
  });
  if (open.length > 0 || !release || !releasedBy || !statement) return { ok: false, findings: open };
  return {
    ok: true,
    released: { ...assessment, release, releasedBy, statement, further, releasedAt: at } as ReleasedVisit,
  };
}

function otherPerson(by: string, expected: string): Finding<Said> {
  return {
    code: 'RELEASED_BY_ANOTHER',
    severity: 'blocks',
    pointer: '/release/by',
    sentence: said(m.release_asksReleaseRecordNames, { by, expected }),
    remedy: said(m.release_remedy),
    source: PRACTICE.text,
    data: { by, expected },
  };
}

function hazardNotDenied(): Finding<Said> {
  return {
    code: 'HAZARD_NOT_DENIED',
    severity: 'blocks',
    pointer: '/release',
    sentence: said(m.release_releasingPersonDidNot),
    remedy: said(m.release_stateActYourOwnNot),
    source: 'UK ANO 2016 art. 47(3); ML.A.801',
    data: {},
  };
}
