import type { Page } from '@playwright/test';

/** Puts something into browser storage as the site keeps it, with nothing of ours; a reload shows it. */
export const putSlot = (page: Page, name: string, data: object): Promise<void> =>
  page.evaluate(
    ({ key, text }) => {
      localStorage.setItem(`hot-clutch:${key}:a`, text);
      localStorage.setItem(`hot-clutch:${key}:slot`, 'a');
    },
    { key: name, text: JSON.stringify({ v: 1, n: 99, data }) },
  );
