import { DASH } from '../../text/dash.ts';
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
    text: statement?.text ?? say.words`No statement of the regime was chosen.`,
    scope: release?.scope ?? DASH,
    pack: identity?.pack ?? DASH,
    issue: identity?.issue ?? DASH,
    regime: regime.title,
    regimeVersion: say.date(regime.version),
    statementSource: statement
      ? `${say.term(statement.source.text)}${statement.source.status === 'read' ? '' : say.words`; unverified`}`
      : DASH,
    completed: visit.visit.workEndedAt ? say.moment(visit.visit.workEndedAt) : DASH,
    meters: meterRows(context),
    hasLimitations: limitations.length > 0,
    limitations,
    hasDeferred: deferred.length > 0,
    deferred: deferred.map((open) => {
      const limit = openUntil(context, open) ?? say.words`NO LIMIT`;
      return say.words`${itemName(context, open)}, ${open.text}: to be done by ${limit}`;
    }),
    hazard: released
      ? say.words`The releasing person stated to know of no condition of the aircraft that endangers flight.`
      : say.words`The statement that no condition endangering flight is known has not been made.`,
    signatures: releaserSignature(context, say.words`Releasing person`, true),
    ...sources(
      say.words`This statement approves the work described in this pack and nothing else. It replaces neither the maker’s data nor local rules nor the judgement of the person who signs.`,
    ),
  };
}
