// Without any script: everything can still be done to its end.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { close, picture, visit } from "./lib/browser.mjs";
import { serve } from "./lib/server.mjs";
import { begin, during, link, rateAll, send } from "./lib/ways.mjs";

after(close);

const pathOf = (page) => new URL(page.url()).pathname;

// Without script a page cannot be asked about itself either, so that this one presses by selector alone.
function plain(page) {
  return {
    page,
    press: (selector) => page.locator(selector).first().click(),
    choose: (name, value) => page.locator(`main input[type=radio][name="${name}"][value="${value}"]`).check(),
  };
}

test("a timed session and a log, without script", async (t) => {
  const server = await serve(t);
  const { page } = await visit(server, { javaScriptEnabled: false });
  const she = plain(page);
  await page.goto(server.address);
  await she.press(begin("step"));
  if ((await page.locator('form[action="/practice/new"]').count()) > 0) {
    await she.press('form[action="/practice/new"]:has([value=nothing_new]) button');
  }
  await she.press(during("begin"));
  assert.equal(pathOf(page), "/practice");
  const clock = page.locator("[role=timer]");
  const shown = () => page.locator("[data-clock]").innerText();
  const first = await shown();
  // What to do instead of watching the clock is said where no script runs.
  assert.ok((await page.locator("noscript, .practice").first().innerText()).trim());
  await picture(page, "variant-practice-without-script");
  await page.waitForTimeout(1100);
  await page.reload();
  assert.notEqual(await shown(), first, "loading the page again moves the clock");
  assert.ok(await clock.getAttribute("aria-label"), "the clock is said as well");
  await she.press(during("pause"));
  const paused = await shown();
  await page.waitForTimeout(1100);
  await page.reload();
  assert.equal(await shown(), paused, "a pause is a pause");
  await she.press(during("go_on"));
  await she.press(during("stop"));
  await she.press(link("/practice/rate"));
  await rateAll(she, "2");
  await she.press(send("/practice/rate"));
  assert.match(pathOf(page), /^\/kept\//);
  // And one written down by hand.
  await page.goto(`${server.origin}/log`);
  const first_of = async (name) => she.choose(name, await page.locator(`main input[name="${name}"]`).first().getAttribute("value"));
  for (const name of ["practice", "size", "position", "ended"]) await first_of(name);
  await page.locator("main [name=minutes]").fill("6");
  await rateAll(she, "2");
  await she.press(send("/log"));
  assert.match(pathOf(page), /^\/kept\//);
});
