import type { Page } from 'playwright-core';

/** Opens a page of the workshop, gives the key where it is asked for, and waits until everything has been read. */
export async function openPage(page: Page, address: string, key: string): Promise<void> {
  await page.goto(address);
  await page.locator('#key-form:not([hidden]), #work:not([hidden])').first().waitFor();
  if (await page.locator('#key').isVisible()) {
    await page.locator('#key').fill(key);
    await page.getByRole('button', { name: 'Work with this key' }).click();
  }
  await page.locator('#busy').waitFor({ state: 'hidden' });
}
