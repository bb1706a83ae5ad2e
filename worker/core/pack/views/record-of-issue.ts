import type { PayloadRule } from '../../calc/loading/payload.ts';
import type { Regime } from '../../gate/regimes/regime.ts';
import { RULE_SET } from '../../gate/rule-set.ts';
import { RULES } from '../../gate/rules.ts';
import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { DocumentDigest } from '../document-digest.ts';
import { isRegimeValue, REGIME_VALUE_NAMES } from '../regime-value-names.ts';
import type { View } from '../render.ts';
import { toConfirm } from '../unread-figures.ts';
import { common, sources } from './common.ts';
import { issueChanges } from './issue-changes.ts';
import { sealedByLine } from './sealed-by.ts';

export function recordOfIssueView(context: PackContext, digests: readonly DocumentDigest[]): View {
  const { identity, issuedAt, recordSha256, regime, findings, fmt } = context;
  const unread = toConfirm(context);
  const notes = findings.filter(({ severity }) => severity === 'note');
  return {
    ...common(context),
    ...issueChanges(context),
    pack: identity?.pack ?? DASH,
    issue: identity?.issue ?? DASH,
    issuedAt: fmt.timestamp(issuedAt),
    visit: identity?.visit ?? DASH,
    sealedBy: sealedByLine(context),
    supersedes: identity ? (identity.supersedes ?? fmt.text(m.none)) : DASH,
    previous: previousText(context),
    ruleSet: fmt.text(m.recordOfIssue_rules, { ruleSet: RULE_SET, count: RULES.length }),
    recordSha256,
    digests: digests.map(({ id, sha256 }) => ({ id, sha256 })),
    regime: fmt.text(m.recordOfIssue_edition, { regime: fmt.text(regime.title), version: fmt.date(regime.version) }),
    values: regimeRows(fmt, regime),
    toConfirm: unread ? fmt.value(unread) : '',
    hasNotes: notes.length > 0,
    notes: notes.map(({ code, sentence }) => ({ code, sentence })),
    ...sources(
      fmt.text(m.recordOfIssue_attachedPdfRecordRecord),
      fmt.text(m.recordOfIssue_packIssuedArchiveAlso),
      fmt.text(m.recordOfIssue_localRulesFirst),
    ),
  };
}

/** Returns the pack before and the digest of its manifest; a draft does not know yet what it will follow. */
function previousText({ identity, fmt }: PackContext): string {
  if (!identity) return DASH;
  const { previous } = identity;
  if (!previous) return fmt.text(m.recordOfIssue_noneFirstPackAircraft);
  return fmt.text(m.recordOfIssue_manifest, { pack: previous.pack, manifestSha256: previous.manifestSha256 });
}

/** Returns a row for each value, in the order of the regime. */
function regimeRows(fmt: Formatter, regime: Regime): Record<string, string>[] {
  return Object.keys(regime)
    .filter(isRegimeValue)
    .map((name) => {
      const { value, unit, source } = regime[name];
      return {
        name: fmt.text(REGIME_VALUE_NAMES[name]),
        value: valueText(fmt, value),
        unit: fmt.term(unit),
        source: fmt.term(source.text),
      };
    });
}

type Value = string | number | boolean | readonly string[] | PayloadRule | null;

function valueText(fmt: Formatter, value: Value): string {
  if (value === null) return DASH;
  if (typeof value === 'boolean') return value ? fmt.text(m.yes) : fmt.text(m.no);
  if (typeof value === 'number') return fmt.asIs(value);
  if (typeof value === 'string') return fmt.term(value);
  return 'perSeatKg' in value ? payloadText(fmt, value) : value.map((entry) => fmt.term(entry)).join(', ');
}

const payloadText = (fmt: Formatter, { perSeatKg, fuelHours }: PayloadRule): string =>
  `${fmt.text(m.recordOfIssue_perSeat)} ${fmt.asIs(perSeatKg)}, ${fmt.text(m.recordOfIssue_fuelHours)} ${fmt.asIs(fuelHours)}`;
