import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import type { PdfObject } from '../pdf-object.ts';
import { damaged } from '../refusal.ts';

/** What showing something once costs its reader, but for what it shows in turn. */
export interface Drawing {
  operators: number;
  pixels: number;
  /** What it shows, and how often: forms, images, cells of patterns, drawn letters. */
  uses: Map<PdfObject, number>;
}

interface Cost {
  draws: number;
  pixels: number;
}

// Real pages show forms within forms some ten deep.
const DEEPEST = 64;

/**
 * What readers have to do to show a page: forms are shown within forms, so that a small file can ask for more than can ever be drawn.
 * Each part is known by the object that it was read from.
 */
export class DrawingCosts {
  readonly #drawings = new Map<PdfObject, Drawing>();
  readonly #costs = new Map<PdfObject, Cost>();

  /** The part that an object shows, empty where it is new. */
  of(object: PdfObject): Drawing {
    const known = this.#drawings.get(object);
    if (known) return known;
    const drawing: Drawing = { operators: 0, pixels: 0, uses: new Map() };
    this.#drawings.set(object, drawing);
    return drawing;
  }

  /** Charges what it takes to show a page. Refuses what shows itself. */
  charge(page: PdfObject, budget: Budget): void {
    const { draws, pixels } = this.#costOf(page, 0);
    budget.spend('draws', draws);
    budget.spend('pixels', pixels);
  }

  #costOf(object: PdfObject, depth: number): Cost {
    const known = this.#costs.get(object);
    if (known) return known;
    if (depth > DEEPEST) throw damaged(fault('pages-draw-themselves-too-much-within'));
    const { operators, pixels, uses } = this.of(object);
    const cost = { draws: operators, pixels };
    for (const [used, count] of uses) {
      const each = this.#costOf(used, depth + 1);
      cost.draws += count * (1 + each.draws);
      cost.pixels += count * each.pixels;
    }
    this.#costs.set(object, cost);
    return cost;
  }
}
