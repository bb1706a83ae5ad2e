import { phrase } from '../words/words.ts';

/** Limits that follow from the visit and stand in every pack, by their identifiers. */
export const OWNER_LIMIT_NAMES = {
  'empty-mass': phrase`Empty mass`,
  'empty-arm': phrase`Empty centre of gravity`,
  'maximum-mass': phrase`Maximum mass`,
  'zero-fuel-mass': phrase`Maximum zero-fuel mass`,
  'landing-mass': phrase`Maximum landing mass`,
  'useful-load': phrase`Crew, baggage and fuel together`,
  'full-tanks-payload': phrase`Left for crew and baggage with full tanks`,
  'least-pilot': phrase`Least solo pilot`,
} as const;
