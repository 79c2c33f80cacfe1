import axe from 'axe-core';
import type { Page } from 'playwright-core';

/**
 * What axe-core finds on a page as it is now, as `impact rule: elements`; empty when it finds nothing. Looked for is everything
 * WCAG 2.2 asks for on levels A and AA and what axe-core calls best practice.
 */
export async function axeFindings(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { violations } = await Reflect.get(window, 'axe').run();
    type Found = { impact: string; id: string; nodes: { target: string[] }[] };
    return violations.map(
      ({ impact, id, nodes }: Found) =>
        `${impact} ${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
    );
  });
}

/** By how many pixels a page is wider than its window; 0 when it fits. */
export function overflowOf(page: Page): Promise<number> {
  return page.evaluate(() => Math.max(0, document.documentElement.scrollWidth - innerWidth));
}

/** Controls smaller than 24 by 24 pixels (WCAG 2.2, success criterion 2.5.8), links in running text left out. */
export function smallControls(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('button, input, select, textarea, summary')].flatMap(
      (control) => {
        const { width, height } = control.getBoundingClientRect();
        const isSmall = control.checkVisibility() && (width < 24 || height < 24);
        return isSmall ? [`${control.textContent} ${width}x${height}`] : [];
      },
    ),
  );
}
