import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../../worker/local/service/places.ts';

/** What earlier versions of the code made, one folder each: `storage`, `export` and `edition.json`. Nothing in them is ever edited. */
export const EDITIONS = join(ROOT, 'fixtures/kept');

/** Secrets of the deployments that made them; nothing else was ever kept under these. */
export const SECRETS = { adminSecret: 'secret-of-the-kept-editions', sealSecret: 'seal-secret-of-the-kept-editions' };

export const WORKSHOP = { id: 'kept', name: 'Workshop of the kept editions' };

/** A link and what its page says first; `null` where it opens nothing. */
export interface KeptLink {
  path: string;
  pack: string;
  audience: 'owner' | 'inspector';
  headline: 'Released' | 'Freigegeben' | 'Superseded' | 'Withdrawn' | null;
}

export interface Edition {
  madeAt: string;
  /** The first key of the workshop. */
  key: string;
  /** A key in the hand of `jonas`. */
  keyOfJonas: string;
  links: KeptLink[];
}

export const editionNames = (): string[] => readdirSync(EDITIONS).sort();

export const editionNamed = (name: string): Edition =>
  JSON.parse(readFileSync(join(EDITIONS, name, 'edition.json'), 'utf8'));
