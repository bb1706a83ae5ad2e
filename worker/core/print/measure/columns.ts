import type { PrintFinding } from '../print-job.ts';
import { BLOCK_GAP_PT } from '../style/block-style.ts';
import type { BlockRule } from './layout-context.ts';
import { heightOf, stack } from './stack.ts';
import { BREAK, type Strip, strip } from './strip.ts';

const GUTTER_PT = 19.5;

// Two pages of lines at the smallest leading; more is too long for a page in any case.
const MAX_STRIPS = 250;

// Returns the index at which the longer column is shortest; of equal splits, the first.
function bestSplit(strips: readonly Strip[]): number {
  let best = strips.length;
  let bestPt = heightOf(strips);
  for (let at = 1; at < strips.length; at++) {
    const divided = strips[at];
    if (!divided || divided.breakBefore > BREAK.free || divided.repeat !== null) continue;
    const longerPt = Math.max(heightOf(strips.slice(0, at)), heightOf(strips.slice(at)));
    if (longerPt < bestPt - 0.01) [best, bestPt] = [at, longerPt];
  }
  return best;
}

/** `<div class="columns">`: two equal, balanced columns; content too long for one page in this form is set in one column. */
export const columnsBlock: BlockRule = (block, setting, flow) => {
  const columnPt = (setting.columnPt - GUTTER_PT) / 2;
  const findings: PrintFinding[] = [];
  const strips = flow(block.children, { ...setting, columnPt, report: (finding) => findings.push(finding) });
  const at = strips.length > MAX_STRIPS ? 0 : bestSplit(strips);
  const [left, right] = [stack(strips.slice(0, at)), stack(strips.slice(at))];
  const heightPt = Math.max(left.heightPt, right.heightPt);
  if (heightPt > setting.bodyPt) return flow(block.children, setting);
  findings.forEach(setting.report);
  return [
    strip({
      heightPt,
      abovePt: strips[0]?.abovePt ?? 0,
      belowPt: BLOCK_GAP_PT * setting.scale,
      items: [
        { kind: 'group', xPt: 0, yPt: 0, items: left.items },
        { kind: 'group', xPt: columnPt + GUTTER_PT, yPt: 0, items: right.items },
      ],
    }),
  ];
};
