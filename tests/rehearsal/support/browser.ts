import chromium from '@sparticuz/chromium';
import { type Browser, type Page, chromium as playwright } from 'playwright-core';

/**
 * Flags of the package that do not suit a test: a single-process browser dies with its first page,
 * and the security of web pages is part of what is looked at.
 */
const UNWANTED = ['--single-process', '--disable-web-security', '--allow-running-insecure-content'];

/** Starts the browser that comes with the npm packages; nothing has to be installed beside them. */
export async function launchBrowser(): Promise<Browser> {
  const executablePath = await chromium.executablePath();
  const args = chromium.args.filter((flag) => !UNWANTED.includes(flag));
  return playwright.launch({ args, executablePath, headless: true });
}

/** Collects what a page complains about: script errors, console errors and failed or outside requests. */
export function complaintsOf(page: Page, ownUrl: string): string[] {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`console: ${message.text()}`);
  });
  page.on('request', (request) => {
    if (!request.url().startsWith(ownUrl)) complaints.push(`outside: ${request.url()}`);
  });
  return complaints;
}
