import type { Regime, Sourced } from '../../gate/regimes/regime.ts';
import { RULE_SET } from '../../gate/rule-set.ts';
import { RULES } from '../../gate/rules.ts';
import type { Printer } from '../../units/print.ts';
import type { PackContext } from '../context.ts';
import { DASH } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { sealedByLine } from './sealed-by.ts';

/** The digests of the documents before this one, and how the pack is proved unaltered. */
export interface DocumentDigest {
  id: string;
  title: string;
  sha256: string;
}

export function recordOfIssueView(context: PackContext, digests: readonly DocumentDigest[]): View {
  const { identity, recordSha256, regime, findings, say } = context;
  const notes = findings.filter(({ severity }) => severity === 'note');
  return {
    ...common(context),
    pack: identity.pack,
    issue: identity.issue,
    issuedAt: say.moment(identity.issuedAt),
    visit: identity.visit,
    sealedBy: sealedByLine(context),
    supersedes: identity.supersedes ?? say.words`none`,
    previous: identity.previous
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

function isSourced(value: unknown): value is Sourced<unknown> {
  return typeof value === 'object' && value !== null && 'value' in value && 'source' in value;
}

function regimeRows(say: Printer, regime: Regime): Record<string, string>[] {
  return Object.entries(regime)
    .filter((entry): entry is [string, Sourced<unknown>] => isSourced(entry[1]))
    .map(([name, { value, unit, source }]) => ({
      name: say.term(spaced(name)),
      value: valueText(say, value),
      unit: say.term(unit),
      source: say.term(source.text),
      status: source.status === 'read' ? say.words`read` : say.words`unverified`,
    }));
}

/** `leftRightShare` as `left right share`. */
function spaced(name: string): string {
  return name.replace(/(Kg|Mm|Deg|Percent)$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

function valueText(say: Printer, value: unknown): string {
  if (value === null) return DASH;
  if (Array.isArray(value)) return value.map((entry) => valueText(say, entry)).join(', ');
  if (typeof value === 'object')
    return Object.entries(value as object)
      .map(([key, entry]) => `${say.term(spaced(key))} ${valueText(say, entry)}`)
      .join(', ');
  if (typeof value === 'boolean') return value ? say.words`yes` : say.words`no`;
  return typeof value === 'number' ? say.asIs(value) : say.term(String(value));
}
