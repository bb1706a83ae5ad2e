import type { Traction } from '../../record/visit.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';

/** Returns the traction circuit with its caution and checks; nothing if the record has none. */
export function tractionView(context: PackContext): View {
  const traction = context.visit.electrical?.traction;
  if (!traction) return { hasTraction: false };
  const { fmt } = context;
  return {
    hasTraction: true,
    highVoltage: fmt.text(m.electricalLoadAnalysis_highVoltageWork, { nominalV: fmt.asIs(traction.nominalV) }),
    isolation: isolationText(context, traction) ?? fmt.text(m.notStated),
    insulation: insulationText(context, traction) ?? fmt.text(m.notStated),
    disconnect: disconnectText(context, traction) ?? fmt.text(m.notStated),
  };
}

function isolationText({ fmt, visit }: PackContext, { isolation }: Traction): string | undefined {
  if (!isolation) return undefined;
  return fmt.text(m.electricalLoadAnalysis_isolationBy, {
    by: nameOf(visit, isolation.by),
    secondBy: nameOf(visit, isolation.secondBy),
    at: fmt.timestamp(isolation.at),
  });
}

function insulationText({ fmt, visit }: PackContext, { insulation }: Traction): string | undefined {
  if (!insulation) return undefined;
  const { resistanceMohm, limitMohm, testV, by, at, instrument } = insulation;
  const text = fmt.text(m.electricalLoadAnalysis_insulationBy, {
    value: fmt.asIs(resistanceMohm),
    limit: fmt.asIs(limitMohm),
    testV: fmt.asIs(testV),
    by: nameOf(visit, by),
    at: fmt.timestamp(at),
  });
  return instrument === undefined
    ? text
    : fmt.text(m.electricalLoadAnalysis_insulationWith, { insulation: text, instrument });
}

function disconnectText({ fmt, visit }: PackContext, { disconnect }: Traction): string | undefined {
  if (!disconnect) return undefined;
  const by = { by: nameOf(visit, disconnect.by), at: fmt.timestamp(disconnect.at) };
  return disconnect.isOpened
    ? fmt.text(m.electricalLoadAnalysis_disconnectOpened, by)
    : fmt.text(m.electricalLoadAnalysis_disconnectFailed, by);
}
