import { pathToFileURL } from 'node:url';
import type { Browser } from 'puppeteer';

/** White round the sheet and the most that is shown of a long one, in CSS pixels; picture pixels to a CSS pixel. */
const [border, tallest, density] = [14, 960, 1.25];

/** A PNG of the sheet on a page, at a size that depends on its paper only. */
export async function takePicture(browser: Browser, html: string): Promise<Uint8Array> {
  const page = await browser.newPage();
  try {
    await page.setViewport({ width: 1100, height: 1000, deviceScaleFactor: density });
    await page.goto(pathToFileURL(html).href, { waitUntil: 'load' });
    await page.evaluate('document.fonts.ready.then(() => true)');
    const box = await (await page.$('section.sheet'))?.boundingBox();
    if (!box) throw new Error(`${html} shows no sheet`);
    const clip = {
      x: Math.round(box.x) - border,
      y: Math.round(box.y) - border,
      width: Math.round(box.width) + 2 * border,
      height: Math.min(Math.round(box.height) + 2 * border, tallest),
    };
    return await page.screenshot({ type: 'png', clip, captureBeyondViewport: true });
  } finally {
    await page.close().catch(() => undefined);
  }
}
