// What is done at the clinician's desk, as she does it. Decides which control is meant; leaves what must come
// of it to the tests.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { join } from "node:path";
import { PNG } from "pngjs";
import { PASSPHRASE } from "./server.mjs";

const jsQR = createRequire(import.meta.url)("jsqr");

/** First use, from the question for a passphrase to the copy that was looked at. Gives the copy's path. */
export async function firstUse(she, room) {
  await she.type("new", PASSPHRASE);
  await she.type("again", PASSPHRASE);
  await she.press('form[action="/first"] button');
  const saved = await she.saves('form[action="/keys/copy/file"] button');
  const copy = join(room, saved.suggestedFilename());
  await saved.saveAs(copy);
  await she.upload("file", copy);
  await she.type("passphrase", PASSPHRASE);
  await she.press('form[action="/keys/copy"] button');
  return copy;
}

/** What a QR code on the page says, read from its picture by jsQR, which knows nothing of us. */
export async function decoded(page, selector) {
  const shown = PNG.sync.read(await page.locator(selector).first().screenshot({ scale: "device" }));
  const found = jsQR(new Uint8ClampedArray(shown.data), shown.width, shown.height);
  assert.ok(found, `no code is found in the picture of ${selector} (${shown.width} x ${shown.height})`);
  return found.data;
}

/** Brings files in and waits until they were read; the page says how far it is. */
export async function bring(she, server, files) {
  await she.page.goto(`${server.origin}/bring`);
  await she.upload("files", files);
  await she.press('form[action="/bring"] > button');
  for (let again = 0; (await she.page.locator("main progress").count()) > 0; again++) {
    assert.ok(again < 100, "it is read at last");
    await she.page.waitForTimeout(200);
    await she.page.goto(`${server.origin}/bring/now`);
  }
}
