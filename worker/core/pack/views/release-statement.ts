import type { Statement } from '../../gate/regimes/regime.ts';
import { statementText } from '../../gate/statement-text.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { meterRows } from './meter-rows.ts';
import { notCovered } from './not-covered.ts';
import { itemName, limitationTexts, openUntil, standing } from './open-items.ts';
import { releaserSignature } from './releaser-signature.ts';
import { restatedParts } from './restated-parts.ts';
import { workOfVisit } from './work-of-visit.ts';
import { workState } from './work-state.ts';

export function releaseStatementView(context: PackContext): View {
  const { visit, regime, released, identity, fmt } = context;
  const { release } = visit;
  const statement = regime.statements.find(({ id }) => id === release?.statement);
  const none = fmt.text(m.releaseStatement_noStatementRegimeChosen);
  const limitations = limitationTexts(context);
  const deferred = standing(context, 'deferral');
  const parts = notCovered(context);
  const work = workOfVisit(context);
  return {
    ...common(context),
    ...workState(context),
    ...restatedParts(context),
    workOfVisit: work === '' ? '' : fmt.text(m.workOfVisit_line, { work }),
    notCovered: parts === '' ? '' : fmt.text(m.notCovered_line, { parts }),
    title: statement ? fmt.text(statement.title) : DASH,
    text: statement ? statementText(statement, visit, fmt) : none,
    ruleWording: ruleWording(context, statement),
    scope: release?.scope ?? DASH,
    further: (release?.further ?? []).map(({ statement: named, scope }) => {
      const found = regime.statements.find(({ id }) => id === named);
      return {
        title: found ? fmt.text(found.title) : named,
        text: found ? statementText(found, visit, fmt) : none,
        ruleWording: ruleWording(context, found),
        scope: fmt.text(m.releaseStatement_furtherCovers, { scope }),
      };
    }),
    hasSignOffs: (visit.signOffs ?? []).length > 0,
    signOffs: (visit.signOffs ?? []).map(({ by, at, work }) => {
      const { name, capacity, authorisation } = signatureOf(context, by, '', '');
      return { name: `${name}, ${capacity}`, authorisation, at: fmt.timestamp(at), work };
    }),
    pack: identity?.pack ?? DASH,
    issue: identity?.issue ?? DASH,
    regime: fmt.text(regime.title),
    regimeVersion: fmt.date(regime.version),
    statementSource: statement ? fmt.term(statement.source.text) : DASH,
    completed: visit.visit.workEndedAt ? fmt.timestamp(visit.visit.workEndedAt) : DASH,
    meters: meterRows(context),
    hasLimitations: limitations.length > 0,
    limitations,
    hasDeferred: deferred.length > 0,
    deferred: deferred.map((open) => {
      const limit = openUntil(context, open) ?? fmt.text(m.noLimit);
      return fmt.text(m.releaseStatement_done, { context: itemName(context, open), open: open.text, limit });
    }),
    hazard: released
      ? fmt.text(m.releaseStatement_releasingPersonStatedKnow)
      : fmt.text(m.releaseStatement_statementNoConditionEndangering),
    signatures: releaserSignature(context, fmt.text(m.releaseStatement_releasingPerson), true),
    ...sources(fmt.text(m.releaseStatement_statementApprovesWorkDescribed)),
  };
}

/** Returns the words of the rule, printed after the sentence, as they are; empty if the rule prescribes none. */
function ruleWording({ fmt }: PackContext, statement: Statement | undefined): string {
  if (statement?.ruleWording === undefined) return '';
  return fmt.text(m.releaseStatement_ruleWording, {
    source: fmt.term(statement.source.text),
    wording: statement.ruleWording,
  });
}
