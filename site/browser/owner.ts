// Owner's page: loading check, and use without a network.
import type { LoadingFacts } from '../../worker/core/pack/loading-facts.ts';
import { startLoadingCheck } from './loading-check.ts';
import { pageAsItCame, startOffline } from './offline-page.ts';

const asItCame = pageAsItCame();

const facts = document.querySelector('#loading-facts')?.textContent;
if (facts) startLoadingCheck(JSON.parse(facts) as LoadingFacts);
startOffline(asItCame);
