import { describe, expect, test } from 'vitest';
import { packContext } from '../../../worker/core/pack/context.ts';
import { render, type View } from '../../../worker/core/pack/render.ts';
import { loadingSheetView } from '../../../worker/core/pack/views/loading-sheet.ts';
import { ownerSummaryView } from '../../../worker/core/pack/views/owner-summary.ts';
import { AT, assessed, posted } from './fixture.ts';

/** The demo aircraft with other stations, as loading sheet and summary print it. */
async function printed(changes: Record<string, unknown>): Promise<{ sheet: string; summary: string }> {
  const record = posted('nose-wheel-full');
  const assessment = await assessed({ ...record, aircraft: { ...(record.aircraft as object), ...changes } });
  const context = packContext(assessment, { of: { draftAt: AT }, recordSha256: assessment.recordSha256 });
  const plain = (template: string, view: View): string =>
    render(template, view)
      .replaceAll(/<[^>]+>/g, ' ')
      .replaceAll(/\s+/g, ' ');
  return {
    sheet: plain('loading-sheet', loadingSheetView(context)),
    summary: plain('owner-summary', ownerSummaryView(context)),
  };
}

const { stations } = posted('nose-wheel-full').aircraft as { stations: { id: string; kind: string }[] };

describe('an aircraft without tanks', () => {
  const sailplane = {
    stations: stations.filter(({ kind }) => kind !== 'fuel'),
    engine: undefined,
    propeller: undefined,
  };

  test('has no columns and no words for fuel, and one column of baggage', async () => {
    const { sheet, summary } = await printed(sailplane);
    for (const text of [sheet, summary])
      expect(text).not.toMatch(
        /usable fuel|no fuel|fuel is gone|end of the fuel|crew and fuel|without fuel|propeller\./i,
      );
    expect(sheet).toMatch(/Crew Baggage Pilot alone, 60\.0 25\.0 Pilot alone, 70\.0 25\.0 /);
    expect(summary).toContain('the baggage allowed for each crew.');
  });

  test('is told apart from one with an engine and tanks', async () => {
    const { sheet, summary } = await printed({});
    expect(sheet).toMatch(/No fuel at .*by usable fuel at take-off.*Crew 19\.5 39\.0 58\.5 78\.0/);
    expect(summary).toContain('Stay clear of the propeller.');
  });
});

test('many baggage places are named on the card alone', async () => {
  const bays = Array.from({ length: 6 }, (_, index) => ({
    ...stations.find(({ kind }) => kind === 'baggage'),
    ...{ id: `bay-${index}`, name: `Bay ${index}`, maximumMass: 2 },
  }));
  const { sheet } = await printed({ stations: [...stations, ...bays] });
  expect(sheet).toContain('Baggage places are filled in the order of the stations on the cockpit card');
  const two = await printed({ stations: [...stations, ...bays.slice(0, 1)] });
  expect(two.sheet).toContain('filled in this order: Baggage bay, Bay 0;');
});
