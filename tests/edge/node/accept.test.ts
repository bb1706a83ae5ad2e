import { describe, expect, test } from 'vitest';
import { preferred } from '../../../worker/edge/http/accept.ts';

const OFFERS = ['text/html', 'application/pdf'] as const;

describe('preferred()', () => {
  test.each([
    [null, 'text/html'],
    ['', 'text/html'],
    ['*/*', 'text/html'],
    ['application/pdf', 'application/pdf'],
    ['application/pdf, text/html', 'text/html'],
    ['text/html;q=0.2, application/*;q=0.9', 'application/pdf'],
    ['text/*;q=0, */*', 'application/pdf'],
    ['TEXT/HTML;level=1;Q=1', 'text/html'],
    ['image/png', undefined],
    ['text/html;q=0, application/pdf;q=0', undefined],
    ['text/html;q=x', undefined],
  ])('of %j is %j', (accept, offer) => {
    expect(preferred(accept, OFFERS)).toBe(offer);
  });
});
