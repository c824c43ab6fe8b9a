import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser, Page } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { launchChromium } from '../build/launch-chromium.ts';
import { siteServer } from '../build/site-server.ts';
import { bind, headingsOf, type Part } from './bind.ts';
import { chaptersOf } from './chapters.ts';
import { settled, type Pages } from './contents.ts';
import type { Edition } from './edition.ts';
import { chapterFrom } from './open.ts';
import type { Options } from './options.ts';
import { placesIn } from './places.ts';
import { Refusal } from './refusal.ts';
import { words } from './words.en.ts';

/** The first Chromium with margin boxes, which hold running heads and page numbers. */
const LEAST_CHROMIUM = 131;
/** Numbers of other length move a line now and then; a third printing has always been enough. */
const MOST_PASSES = 5;
const PLACE = '/the-book/';

async function launch(): Promise<Browser> {
  const browser = await launchChromium(['--disable-gpu']).catch(() => {
    throw new Refusal(words.refuse.noChromium);
  });
  const version = browser.version();
  if (Number.parseInt(version, 10) >= LEAST_CHROMIUM) return browser;
  await browser.close();
  throw new Refusal(words.refuse.oldChromium({ version, least: String(LEAST_CHROMIUM) }));
}

async function printed(page: Page, address: string, html: string): Promise<Uint8Array> {
  await page.route(address, (route) => route.fulfill({ body: html, contentType: 'text/html' }));
  await page.goto(address);
  await page.evaluate(() => document.fonts.ready);
  const pdf = await page.pdf({ preferCSSPageSize: true, outline: true, tagged: true });
  await page.unroute(address);
  return pdf;
}

/** Printed until its own page numbers are true: they stand in it, and can move what comes after them. */
async function inPages(
  page: Page,
  origin: string,
  options: Options,
  made: Edition,
  parts: readonly Part[],
) {
  const ids = new Set([
    ...headingsOf(parts).map(({ id }) => id),
    ...parts.flatMap(({ frozen }) => frozen.ids),
  ]);
  const chapters = parts.map(({ chapter }) => chapter);
  let pages: Pages = new Map();
  for (let pass = 0; pass < MOST_PASSES; pass += 1) {
    const html = bind(parts, { chapters, ids, pages }, made, options);
    const file = await PDFDocument.load(await printed(page, `${origin}${PLACE}`, html), {
      updateMetadata: false,
    });
    const now = placesIn(file);
    if (settled(pages, now)) return file;
    pages = now;
  }
  throw new Refusal(words.refuse.unsettled({ passes: String(MOST_PASSES) }));
}

/** The book as a PDF file, made of the built site in a folder. */
export async function makeBook(
  site: string,
  options: Options,
  made: Edition,
  tell: (chapter: string) => void = () => {},
): Promise<{ readonly bytes: Uint8Array; readonly pages: number }> {
  const server = createServer(siteServer(site));
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const browser = await launch();
  try {
    const page = await browser.newPage();
    const parts: Part[] = [];
    for (const chapter of chaptersOf(options.lessons)) {
      tell(chapter.address);
      parts.push({ chapter, frozen: await chapterFrom(page, origin, chapter, options) });
    }
    const file = await inPages(page, origin, options, made, parts);
    file.setTitle(words.title, { showInWindowTitleBar: true });
    file.setSubject(words.subtitle);
    file.setProducer('Chromium');
    file.setCreator(words.title);
    file.setCreationDate(made.date);
    file.setModificationDate(made.date);
    return { bytes: await file.save(), pages: file.getPageCount() };
  } finally {
    await browser.close();
    server.close();
  }
}
