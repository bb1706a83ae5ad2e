import { describe, expect, test } from 'vitest';
import { packContext } from '../../../worker/core/pack/context.ts';
import { render } from '../../../worker/core/pack/render.ts';
import { loadingSheetView } from '../../../worker/core/pack/views/loading-sheet.ts';
import { ownerSummaryView } from '../../../worker/core/pack/views/owner-summary.ts';
import { weightAndBalanceScheduleView } from '../../../worker/core/pack/views/weight-and-balance-schedule.ts';
import { assessed, posted } from './fixture.ts';

const AT = '2026-10-22T16:30:00+01:00';
const assessment = await assessed(posted('trike'), AT);
const CONTEXT = packContext(assessment, { of: { draftAt: AT }, recordSha256: assessment.recordSha256 });

describe('an aircraft without an envelope', () => {
  test('loadingSheetView() has no chart, no extremes and no verdict on the centre of gravity', () => {
    const sheet = render('loading-sheet', loadingSheetView(CONTEXT));
    expect(sheet).not.toMatch(/<figure|Envelope|Foremost|Rearmost|>inside<|forward out/);
    expect(sheet).toContain('within mass limits');
    expect(sheet).toContain('No limits on the loaded centre of gravity are specified');
  });

  test('loadingSheetView() puts the least pilot of the placard on the cockpit card', () => {
    expect(render('loading-sheet', loadingSheetView(CONTEXT))).toMatch(
      /<dt>Least solo pilot<\/dt><dd><strong>55\.0.kg \(121\.3.lb\)/,
    );
  });

  test('ownerSummaryView() and weightAndBalanceScheduleView() promise no envelope', () => {
    expect(render('owner-summary', ownerSummaryView(CONTEXT))).not.toContain('the envelope');
    const schedule = render('weight-and-balance-schedule', weightAndBalanceScheduleView(CONTEXT));
    expect(schedule).toContain('No limits on the loaded centre of gravity are specified');
  });
});
