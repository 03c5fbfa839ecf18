// A real Chromium, and what every page has to keep to whatever the test is about. Decides how it is started
// and what is watched on each page: requests that leave this machine, messages of the console, breaches of
// the Content-Security-Policy. Leaves what is done on the pages to the tests.

import assert from "node:assert/strict";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { PICTURES } from "./server.mjs";

const EXECUTABLE = process.env.CHROMIUM ?? "/usr/bin/chromium";
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
/** What the browser says when an interface of the machine came or went: it drops what was on its way, on this machine too. */
const NETWORK_CHANGED = "ERR_NETWORK_CHANGED";
/** A small phone, the size of most pictures. */
export const PHONE = { width: 390, height: 844 };

let started;
/** One browser for all tests of a file; each test has a context of its own, with nothing in it. */
export function browser() {
  started ??= chromium.launch({ executablePath: EXECUTABLE, headless: true, args: FLAGS });
  return started;
}
export async function close() {
  if (started) await (await started).close();
  started = undefined;
}

/** A browser of its own that keeps what browsers keep, in this folder. */
export function profile(folder) {
  return chromium.launchPersistentContext(folder, { executablePath: EXECUTABLE, headless: true, args: FLAGS, viewport: PHONE });
}

/** A fresh profile on this server, watched. What was noticed is told when the test ends, or by `check`. */
export async function visit(server, options = {}) {
  const context = await (await browser()).newContext({ viewport: PHONE, acceptDownloads: true, ...options });
  context.setDefaultTimeout(15_000);
  const noticed = [];
  const watching = { origin: server.origin, statuses: true };
  context.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(`${watching.origin}/`)) noticed.push(`a request left this machine: ${url}`);
  });
  // CSP Level 3: a breach is an event in the page and a line in the console.
  context.on("console", (message) => {
    if (message.type() !== "error" && message.type() !== "warning") return;
    // A page that answers 4xx on purpose is a line here too; the tests look at the status themselves.
    if (/Failed to load resource: the server responded with a status of (4|503)/.test(message.text())) return;
    if (message.text().includes(NETWORK_CHANGED)) return;
    noticed.push(`console: ${message.text()}`);
  });
  // What was asked for and did not come, with the browser's own reason. What a page that is left still asked for
  // is given up on purpose.
  context.on("requestfailed", (request) => {
    const why = request.failure()?.errorText ?? "no reason";
    if (!/ERR_ABORTED/.test(why) && !why.includes(NETWORK_CHANGED)) noticed.push(`not loaded: ${request.url()}: ${why}`);
  });
  context.on("weberror", (error) => noticed.push(`error in the page: ${error.error()}`));
  await context.addInitScript(() => {
    window.breaches = [];
    document.addEventListener("securitypolicyviolation", (breach) => {
      window.breaches.push(`${breach.violatedDirective} ${breach.blockedURI}`);
    });
  });
  const page = await context.newPage();
  const check = () => assert.deepEqual(noticed.splice(0), [], "what a page must not do");
  server.guests.push(async () => {
    await context.close();
    check();
  });
  return {
    context,
    page,
    check,
    /** Another server takes the place of the first, as after a restart. */
    moveTo: (other) => (watching.origin = other.origin),
  };
}

/** A picture of the whole page. Nothing is put into the page for it: its policy would forbid that. */
export async function picture(page, name) {
  mkdirSync(PICTURES, { recursive: true });
  await page.screenshot({ path: join(PICTURES, `${name}.png`), fullPage: true, caret: "initial", animations: "allow" });
}

/** Waits until the page has its style sheet. One that the browser dropped is asked for once more; without it, says so. */
export async function styled(page) {
  await page.waitForLoadState("load");
  // A sheet that failed is there all the same, and may not be looked into.
  const has = () =>
    page.evaluate(() =>
      [...document.querySelectorAll("link[rel=stylesheet]")].every((link) => {
        try {
          return link.sheet.cssRules.length > 0;
        } catch {
          return false;
        }
      }),
    );
  if (await has()) return [];
  await page.evaluate(async () => {
    for (const link of document.querySelectorAll("link[rel=stylesheet]")) {
      const again = link.cloneNode();
      const settled = new Promise((done) => ["load", "error"].forEach((end) => again.addEventListener(end, done)));
      link.replaceWith(again);
      await settled;
    }
  });
  return (await has()) ? [] : ["the style sheet did not load"];
}
