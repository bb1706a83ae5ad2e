import { json } from '../answer.ts';
import { peopleOf } from '../archive-facts.ts';
import { assessedOr422 } from '../current-assessment.ts';
import { readJson } from '../read-json.ts';
import type { Operation } from '../route.ts';
import { AssessmentAnswer } from '../schemas.ts';
import { standingFacts } from '../standing.ts';

export const assessRecord: Operation = {
  id: 'assessRecord',
  summary: 'Compute and check a record without keeping it',
  isRepeatable: true,
  description:
    'Earlier packs of the aircraft are not consulted, except for the standing file that the record names; for that, assess a kept visit.',
  body: { type: 'application/json', description: 'A visit record', schema: 'VisitRecord' },
  answers: { 200: { description: 'Results and findings', content: { 'application/json': AssessmentAnswer } } },
  problems: ['malformed-json', 'body-too-large', 'unsupported-media-type', 'record-not-valid'],
  async handle(call) {
    const { value } = await readJson(call.request);
    const standing = await standingFacts(call, value);
    const facts = standing.standing ? { ...standing, people: await peopleOf(call) } : {};
    const assessed = await assessedOr422(call, value, call.world.now().toISOString(), facts);
    return json(call.pipeline.assessmentAnswer(assessed) satisfies AssessmentAnswer);
  },
};
