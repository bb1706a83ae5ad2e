import type { PayloadRule } from '../../calc/payload.ts';
import type { Regime, Sourced } from '../../gate/regimes/regime.ts';
import { RULE_SET } from '../../gate/rule-set.ts';
import { RULES } from '../../gate/rules.ts';
import { DASH } from '../../text/dash.ts';
import type { Printer } from '../../text/print.ts';
import { phrase } from '../../words/words.ts';
import type { PackContext } from '../context.ts';
import type { DocumentDigest } from '../document-digest.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { sealedByLine } from './sealed-by.ts';

type ValueName = { [Name in keyof Regime]: Regime[Name] extends Sourced<unknown> ? Name : never }[keyof Regime];

/** Values of a regime, as a row of a table names them. */
const VALUE_NAMES: Readonly<Record<ValueName, string>> = {
  approvalNeeded: phrase`approval needed`,
  secondInspection: phrase`second inspection`,
  reweighYears: phrase`reweigh years`,
  reweighChangeShare: phrase`reweigh change share`,
  negligibleMassKg: phrase`negligible mass`,
  negligibleMacPercent: phrase`negligible mac`,
  predictionToleranceKg: phrase`prediction tolerance`,
  predictionToleranceMm: phrase`prediction tolerance`,
  leftRightShare: phrase`left right share`,
  runsDisagreeShare: phrase`runs disagree share`,
  levelToleranceDeg: phrase`level tolerance`,
  leastPilotKg: phrase`least pilot`,
  standardPersonKg: phrase`standard person`,
  soloMassHighKg: phrase`solo mass high`,
  minimumPayload: phrase`minimum payload`,
  deferralsCarried: phrase`deferrals carried`,
};

const isValueName = (name: string): name is ValueName => name in VALUE_NAMES;

export function recordOfIssueView(context: PackContext, digests: readonly DocumentDigest[]): View {
  const { identity, issuedAt, recordSha256, regime, findings, say } = context;
  const notes = findings.filter(({ severity }) => severity === 'note');
  return {
    ...common(context),
    pack: identity?.pack ?? DASH,
    issue: identity?.issue ?? DASH,
    issuedAt: say.moment(issuedAt),
    visit: identity?.visit ?? DASH,
    sealedBy: sealedByLine(context),
    supersedes: identity?.supersedes ?? say.words`none`,
    previous: identity?.previous
      ? say.words`${identity.previous.pack}, manifest ${identity.previous.manifestSha256}`
      : say.words`none: the first pack of this aircraft here`,
    ruleSet: say.words`${RULE_SET}, ${RULES.length} rules`,
    recordSha256,
    digests: digests.map(({ id, sha256 }) => ({ id, sha256 })),
    regime: say.words`${regime.title}, edition ${say.date(regime.version)}`,
    values: regimeRows(say, regime),
    hasNotes: notes.length > 0,
    notes: notes.map(({ code, sentence }) => ({ code, sentence })),
    ...sources(
      say.words`Attached to this PDF: the record (record.json) and the manifest (manifest.json) with the digests. SHA-256 of the attached record must be the figure above, and each document’s digest must stand in the manifest.`,
      say.words`A pack issued by the archive also holds its seal (seal.jws): a signature of the workshop over every byte of this file. The verify page of the archive, or npm run verify with the published keys of the workshop, says whether the file is what was sealed, and if not, which page differs.`,
      say.words`A value of the regime marked “unverified” is cited from memory or is a custom of the trade; local rules come first.`,
    ),
  };
}

/** A row for each value, in the order of the regime. */
function regimeRows(say: Printer, regime: Regime): Record<string, string>[] {
  return Object.keys(regime)
    .filter(isValueName)
    .map((name) => {
      const { value, unit, source } = regime[name];
      return {
        name: say.term(VALUE_NAMES[name]),
        value: valueText(say, value),
        unit: say.term(unit),
        source: say.term(source.text),
        status: source.status === 'read' ? say.words`read` : say.words`unverified`,
      };
    });
}

type Value = string | number | boolean | readonly string[] | PayloadRule | null;

function valueText(say: Printer, value: Value): string {
  if (value === null) return DASH;
  if (typeof value === 'boolean') return value ? say.words`yes` : say.words`no`;
  if (typeof value === 'number') return say.asIs(value);
  if (typeof value === 'string') return say.term(value);
  return 'perSeatKg' in value ? payloadText(say, value) : value.map((entry) => say.term(entry)).join(', ');
}

const payloadText = (say: Printer, { perSeatKg, fuelHours }: PayloadRule): string =>
  `${say.words`per seat`} ${say.asIs(perSeatKg)}, ${say.words`fuel hours`} ${say.asIs(fuelHours)}`;
