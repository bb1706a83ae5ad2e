import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { launchBrowser } from '../../site/build/launch-browser.ts';

/** The rules of WCAG 2.2 up to level AA. */
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

export const PHONE = { width: 360, height: 740 };
const DESK = { width: 1280, height: 800 };

/** Success criterion 2.5.5 of WCAG 2.1, Target Size: 44 by 44 CSS px, links within a sentence excepted; from memory. Widths follow from the words. */
const SMALL_TARGETS = `(() => {
  const isHit = (target) => {
    const { right, height } = target.getBoundingClientRect();
    return height > 0 && right > 0 && getComputedStyle(target).visibility === 'visible';
  };
  const isWithinText = (target) =>
    target.tagName === 'A' && getComputedStyle(target).display === 'inline' &&
    target.closest('p, li, td, dd').textContent.trim() !== target.textContent.trim();
  const isTick = (target) => target.type === 'checkbox' && target.closest('label').getBoundingClientRect().height >= 44;
  return [...document.querySelectorAll('a, button, input, select, textarea, summary')]
    .filter((target) => isHit(target) && !isWithinText(target) && !isTick(target))
    .filter((target) => target.getBoundingClientRect().height < 43.5)
    .map((target) => target.tagName + ' ' + (target.id || target.textContent) + ' ' + target.getBoundingClientRect().height);
})()`;

/** A real browser, as small as a phone, with one page. */
export interface Phone {
  page: Page;
  /** What the page has complained of since this was last emptied. */
  complaints: string[];
  /** Whether the page, once all of it is there, is no wider than the window. */
  isWithinWidth(): Promise<boolean>;
  /** Defects of accessibility, each with where it is. */
  defects(): Promise<string[]>;
  /** What is to be hit with a thumb and is lower than 44 px; links within a sentence are read, not hit. */
  smallTargets(): Promise<string[]>;
  /** What is wrong with the page on a phone and on a desk: too wide, or a defect of accessibility. It is left on a phone. */
  wrongAtAnySize(): Promise<string[]>;
  /** Whether the page is within a phone’s width with text twice as large: WCAG 2.2, 1.4.4 Resize Text, from memory. */
  isWithinWidthInLargeText(): Promise<boolean>;
  close(): Promise<void>;
}

export async function openPhone(): Promise<Phone> {
  const browser = await launchBrowser();
  const context = await browser.newContext({ viewport: PHONE, javaScriptEnabled: true });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  const phone: Phone = {
    page,
    complaints,
    async isWithinWidth() {
      await page.waitForLoadState('load');
      return page.evaluate<boolean>('document.documentElement.scrollWidth <= window.innerWidth');
    },
    async defects() {
      const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(' ')}`);
    },
    async isWithinWidthInLargeText() {
      await page.setViewportSize(PHONE);
      await page.evaluate("document.documentElement.style.fontSize = '32px'");
      const isWithin = await phone.isWithinWidth();
      await page.evaluate("document.documentElement.style.fontSize = ''");
      return isWithin;
    },
    smallTargets: () => page.evaluate<string[]>(SMALL_TARGETS),
    async wrongAtAnySize() {
      const wrong: string[] = [];
      for (const size of [DESK, PHONE]) {
        await page.setViewportSize(size);
        if (!(await phone.isWithinWidth())) wrong.push('wider than the window');
        wrong.push(...(await phone.defects()));
      }
      return wrong;
    },
    close: () => browser.close(),
  };
  return phone;
}
