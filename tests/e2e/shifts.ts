import type { Page } from '@playwright/test';

/** How far things on the page have jumped so far (layout shift), once what has been seen of it has been told. */
export const shiftOf = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let sum = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries())
            sum += (entry as PerformanceEntry & { value: number }).value;
        }).observe({ type: 'layout-shift', buffered: true });
        setTimeout(() => resolve(sum), 500);
      }),
  );
