export { readVisit, SETTINGS, visitFrom } from '../../../site/published/read-visit.ts';
