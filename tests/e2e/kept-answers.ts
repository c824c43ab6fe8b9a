import type { Page } from '@playwright/test';

/** The log of answers as it lies in this browser, read with nothing of ours; empty where none was kept yet. */
export function keptAnswers(page: Page): Promise<Record<string, unknown>[]> {
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const open = indexedDB.open('hot-clutch:answers');
        // Opening makes an empty one where there is none, which the page could not use.
        let made = false;
        open.onupgradeneeded = () => {
          made = true;
          open.transaction?.abort();
        };
        open.onerror = () => (made ? resolve([]) : reject(new Error(String(open.error))));
        open.onsuccess = () => {
          const all = open.result.transaction('answers').objectStore('answers').getAll();
          all.onsuccess = () => {
            open.result.close();
            resolve((all.result as { answer: Record<string, unknown> }[]).map((r) => r.answer));
          };
        };
      }),
  );
}
