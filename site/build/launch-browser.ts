import { existsSync } from 'node:fs';
import { type Browser, chromium as driver } from 'playwright-core';

/** Paths of browsers installed on the machine. */
const INSTALLED = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
];

/**
 * Starts a headless Chromium: from the package, else an installed one.
 *
 * @throws Error in one sentence if none can be started
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

/** Starts the packaged browser. The package unpacks its system libraries only if it finds that they are missing. */
async function launchPackaged(): Promise<Browser> {
  process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs24.x';
  const { default: chromium } = await import('@sparticuz/chromium');
  return driver.launch({ executablePath: await chromium.executablePath(), args: chromium.args });
}
