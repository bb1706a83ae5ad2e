import { existsSync } from 'node:fs';
import { type Browser, chromium as driver } from 'playwright-core';

/** Browsers that a machine may have of its own. */
const INSTALLED = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
];

/**
 * A headless Chromium: the one that comes as a package, or else one that is installed.
 *
 * @throws Error in one sentence when none can be started
 */
export async function launchBrowser(): Promise<Browser> {
  const failures: string[] = [];
  const tryOut = async (start: () => Promise<Browser>): Promise<Browser | undefined> => {
    try {
      return await start();
    } catch (error) {
      failures.push(String(error).split('\n')[0] ?? '');
      return undefined;
    }
  };
  const packaged = await tryOut(launchPackaged);
  if (packaged) return packaged;
  for (const executablePath of INSTALLED.filter((path) => existsSync(path))) {
    const installed = await tryOut(() => driver.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] }));
    if (installed) return installed;
  }
  throw new Error(`Cannot start a browser, neither the packaged nor an installed one: ${failures.join('; ')}`);
}

/** The package unpacks the system libraries that it ships only when it believes to run where these are missing. */
async function launchPackaged(): Promise<Browser> {
  process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs24.x';
  const { default: chromium } = await import('@sparticuz/chromium');
  return driver.launch({ executablePath: await chromium.executablePath(), args: chromium.args });
}
