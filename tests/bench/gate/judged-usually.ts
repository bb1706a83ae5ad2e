import type { Class, Verdict } from './judgement.ts';
import type { Operator } from './operators.ts';
import type { Place } from './place.ts';

/** Sections that prove something was done. */
const EVIDENCE = [
  'antennas',
  'asFound',
  'bulletins',
  'carried',
  'certificates',
  'compass',
  'controls',
  'electrical',
  'engineRuns',
  'findings',
  'flights',
  'inspection',
  'lives',
  'measurements',
  'meters',
  'modifications',
  'parts',
  'signOffs',
  'surveillance',
  'weighing',
  'wiring',
];

/** What is usual for a kind of field that the table does not name. */
export function usually(place: Place, operator: Operator): Verdict {
  return { ...judged(place, operator), by: 'kind of field' };
}

interface Judged {
  is: Class;
  because: string;
}

function judged(place: Place, operator: Operator): Judged {
  const isEvidence = EVIDENCE.includes(String(place.path[0]));
  if (operator === 'left out' || operator === 'two left out') return leftOut(place, isEvidence);
  if (operator === 'doubled') return { is: 'free', because: 'An entry that stands there twice' };
  if (operator === 'reordered') return { is: 'nothing', because: 'The order of this list means nothing' };
  if (operator === 'reference' && isEvidence) return { is: 'hurts', because: 'Evidence of another thing' };
  if (operator === 'flipped' && isEvidence)
    return { is: 'hurts', because: place.value === true ? 'It says that the check failed' : 'It says what was not so' };
  return { is: 'free', because: 'Stated once, and in order with everything else' };
}

function leftOut({ means, shape, value, format }: Place, isEvidence: boolean): Judged {
  if (value === false) return { is: 'nothing', because: 'Not stated means no' };
  if (means?.kind === 'person') return { is: 'hurts', because: 'Nobody answers for it' };
  if (means?.kind === 'text' || !isEvidence) return { is: 'free', because: 'A field that may be left out' };
  if (format) return { is: 'hurts', because: 'No day or time of it' };
  if (shape !== 'value' || typeof value === 'number' || value === true)
    return { is: 'hurts', because: 'The evidence of an obligation is gone' };
  return means?.kind === 'reference'
    ? { is: 'hurts', because: 'Evidence of nothing in particular' }
    : { is: 'free', because: 'A field that may be left out' };
}
