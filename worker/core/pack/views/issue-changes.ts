import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';

/** Changes printed; the attached record has all. */
const PRINTED = 40;
/** Longest value printed. */
const LONGEST = 80;

/** What differs from the issue that this pack replaces, and why there is a new one. */
export function issueChanges({ earlierIssue, visit, fmt }: PackContext): View {
  if (!earlierIssue) return { hasIssueChanges: false };
  const { pack, changes } = earlierIssue;
  const shown = changes.filter(({ part }) => part !== '/release/reasonForIssue');
  const left = shown.length - PRINTED;
  return {
    hasIssueChanges: true,
    issueChangesHeading: fmt.text(m.issueChanges_heading, { pack }),
    issueChangesReason: fmt.text(m.issueChanges_reason, { reason: visit.release?.reasonForIssue ?? DASH }),
    hasIssueChangeRows: shown.length > 0,
    issueChangeRows: shown
      .slice(0, PRINTED)
      .map(({ part, before, now }) => ({ part, before: valueText(before), now: valueText(now) })),
    issueChangesMore: left > 0 ? fmt.text(m.issueChanges_more, { count: left }) : '',
  };
}

function valueText(value: unknown): string {
  if (value === undefined) return DASH;
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
}
