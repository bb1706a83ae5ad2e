import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { meterRows } from './meter-rows.ts';
import { itemName, limitationTexts, openUntil, standing } from './open-items.ts';
import { releaserSignature } from './releaser-signature.ts';

export function releaseStatementView(context: PackContext): View {
  const { visit, regime, released, identity, say } = context;
  const { release } = visit;
  const statement = regime.statements.find(({ id }) => id === release?.statement);
  const limitations = limitationTexts(context);
  const deferred = standing(context, 'deferral');
  return {
    ...common(context),
    title: statement?.title ?? DASH,
    text: statement?.text ?? say.text(m.releaseStatement_noStatementRegimeChosen),
    scope: release?.scope ?? DASH,
    pack: identity?.pack ?? DASH,
    issue: identity?.issue ?? DASH,
    regime: regime.title,
    regimeVersion: say.date(regime.version),
    statementSource: statement
      ? `${say.term(statement.source.text)}${statement.source.status === 'read' ? '' : say.text(m.releaseStatement_unverified)}`
      : DASH,
    completed: visit.visit.workEndedAt ? say.moment(visit.visit.workEndedAt) : DASH,
    meters: meterRows(context),
    hasLimitations: limitations.length > 0,
    limitations,
    hasDeferred: deferred.length > 0,
    deferred: deferred.map((open) => {
      const limit = openUntil(context, open) ?? say.text(m.noLimit);
      return say.text(m.releaseStatement_done, { context: itemName(context, open), open: open.text, limit });
    }),
    hazard: released
      ? say.text(m.releaseStatement_releasingPersonStatedKnow)
      : say.text(m.releaseStatement_statementNoConditionEndangering),
    signatures: releaserSignature(context, say.text(m.releaseStatement_releasingPerson), true),
    ...sources(say.text(m.releaseStatement_statementApprovesWorkDescribed)),
  };
}
