// Inspector's page: open points, preview of the pack, changes since the last pack, and the release of what was read.
import type { Pack, Slipmark } from '../../worker/client/client.ts';
import { byId, element } from './element.ts';
import { errorMessage } from './error-message.ts';
import { comparisonTables } from './inspection/comparison-table.ts';
import { showDocuments } from './inspection/document-ticks.ts';
import { unwatch, watch } from './inspection/moved.ts';
import { showPoints } from './inspection/points.ts';
import { type ReadVisit, readVisit, type VisitName } from './inspection/read-visit.ts';
import { startRelease } from './inspection/release-form.ts';
import { showSealed } from './inspection/sealed.ts';
import { ticksOf } from './inspection/ticks.ts';
import { verdictOf } from './sheet/findings-list.ts';
import { openPreview } from './sheet/preview.ts';
import { newestFirst, packStanding } from './shop/pack-standing.ts';
import { said, withKey } from './shop/session.ts';
import { aircraftAddress } from './shop/words.ts';
import { showVerdict } from './show-verdict.ts';
import { startCore } from './thread/ask.ts';

const core = startCore();
const preview = openPreview();
const verdict = byId('verdict', HTMLElement);
const asked = new URLSearchParams(location.search);
const name: VisitName = { registration: asked.get('aircraft') ?? '', visit: asked.get('visit') ?? '' };

withKey(async (client) => {
  if (name.registration === '' || name.visit === '')
    throw new Error('The address must name aircraft and visit, as /inspection?aircraft=Q-SLM&visit=2026-11');
  await show(client);
});

async function show(client: Slipmark): Promise<void> {
  const read = await readVisit(client, name);
  byId('which', HTMLElement).textContent = `${name.registration}, visit ${name.visit}`;
  byId('aircraft-page', HTMLAnchorElement).href = aircraftAddress(name.registration);
  if (read.released) showReleased(client, read.released, read.packs);
  else await showOpen(client, read);
  await showComparison(read);
}

/** Shows a visit that is already sealed: its pack instead of ticks and a draft. */
function showReleased(client: Slipmark, pack: Pack, packs: readonly Pack[]): void {
  unwatch();
  const { kind, words } = packStanding(pack, packs);
  showVerdict(verdict, `${pack.pack}, ${words}`, kind === 'stands');
  for (const part of document.querySelectorAll<HTMLElement>('.until-sealed')) part.hidden = true;
  showSealed(client, pack, packs);
}

async function showOpen(client: Slipmark, read: ReadVisit): Promise<void> {
  const ticks = await ticksOf(name, read.documents);
  const again = (): unknown => said(show(client));
  const sealed = (pack: Pack): void => {
    showReleased(client, pack, newestFirst([pack, ...read.packs]));
    byId('release', HTMLElement).scrollIntoView({ block: 'center' });
  };
  for (const part of document.querySelectorAll<HTMLElement>('.until-sealed')) part.hidden = false;
  showVerdict(verdict, verdictOf(read.points), read.isReleasable);
  preview.update(read.documents, read.files);
  showPoints(client, { name, read, preview, again, reread: () => show(client) });
  const onTick = startRelease(client, { name, read, ticks, show: preview.show, again, sealed });
  showDocuments(read, ticks, preview, onTick);
  watch(client, name, read, again);
}

async function showComparison({ before, record }: ReadVisit): Promise<void> {
  const place = byId('comparison', HTMLElement);
  if (!before) {
    place.replaceChildren(element('p', {}, 'No earlier pack of this aircraft to compare with.'));
    return;
  }
  const { pack, issuedAt, withdrawal } = before.pack;
  const now = { record, at: new Date().toISOString() };
  try {
    const groups = await core.comparison({ record: before.record, at: issuedAt }, now);
    place.replaceChildren(...comparisonTables(groups, withdrawal ? `${pack}, withdrawn` : pack));
  } catch (error) {
    // The rest of the page is from the service and can be used.
    place.replaceChildren(element('p', {}, `Not compared with ${pack}: ${errorMessage(error)}`));
  }
}
