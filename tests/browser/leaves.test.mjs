// What a browser keeps of the pages on its own disk: the whole folder of its profile is read afterwards, byte by byte, for
// every text that was typed and every line that was shown. What it keeps of an ordinary page is looked for in the same way,
// so that the search is known to find something.

import assert from "node:assert/strict";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { test } from "node:test";
import { inflateRawSync, inflateSync, gunzipSync } from "node:zlib";
import { profile } from "./lib/browser.mjs";
import { folder, serve } from "./lib/server.mjs";

/** The browser writes down what is open a few seconds after it changed (from memory of Chromium's session service: 2.5 s). */
const WRITTEN_DOWN_AFTER = 6_000;
/** So many letters in a row are no chance, and are found where a longer text was cut in two. */
const TELLING = 16;

/** Every file below, with its bytes and what is packed in it. */
function files(below) {
  return readdirSync(below, { recursive: true })
    .map((name) => join(below, name))
    .filter((path) => statSync(path, { throwIfNoEntry: false })?.isFile())
    .map((path) => {
      const bytes = readFileSync(path);
      const all = [bytes];
      for (let at = bytes.indexOf(Buffer.from([0x1f, 0x8b, 8])); at >= 0; at = bytes.indexOf(Buffer.from([0x1f, 0x8b, 8]), at + 1)) {
        for (const unpack of [gunzipSync, inflateSync, inflateRawSync]) {
          try {
            all.push(unpack(bytes.subarray(at)));
          } catch {
            // It was none.
          }
        }
      }
      return { name: path.slice(below.length), all };
    });
}

/** Which of these texts stand in the folder, in UTF-8 or UTF-16, and where. */
function found(below, texts) {
  const needles = [];
  for (const text of texts) {
    for (let at = 0; at + TELLING <= text.length; at += TELLING) {
      const part = text.slice(at, at + TELLING);
      needles.push([text, Buffer.from(part, "utf8")], [text, Buffer.from(part, "utf16le")]);
    }
  }
  const where = new Set();
  for (const { name, all } of files(below)) {
    for (const [text, needle] of needles) {
      if (all.some((bytes) => bytes.includes(needle))) where.add(`${name}: ${text}`);
    }
  }
  return [...where];
}

/** The lines that a page shows, long enough to be told from anything else. */
async function lines(page) {
  const text = await page.locator("body").innerText();
  return text.split("\n").map((line) => line.trim()).filter((line) => line.length >= TELLING * 2);
}

const QUESTION = "Invented: is a little soreness on the first morning usual?";
const ANOTHER = "Invented: typed and not yet sent, about the second week";

test("what a browser keeps on its disk tells nothing that was typed or shown", async (t) => {
  const server = await serve(t);
  const below = folder(t);
  const browser = await profile(below);
  const page = browser.pages()[0] ?? (await browser.newPage());
  await page.goto(server.address);
  const shown = [];
  for (const path of ["/today", "/entries", "/summary", "/plan", "/signs", "/call"]) {
    await page.goto(server.origin + path);
    shown.push(...(await lines(page)));
  }
  assert.ok(shown.length > 60, `${shown.length} lines`);
  await page.goto(`${server.origin}/questions`);
  await page.locator("main [name=text]").fill(QUESTION);
  await page.locator('main form[action="/questions"] > button').click();
  await page.goto(`${server.origin}/questions`);
  await page.locator("main [name=text]").fill(ANOTHER);
  await page.waitForTimeout(WRITTEN_DOWN_AFTER);
  await browser.close();
  assert.deepEqual(found(below, [QUESTION, ANOTHER, ...shown]), []);
});

test("the same search finds what a browser keeps of an ordinary page", async (t) => {
  const text = "Invented: a page that anybody may keep, with a form in it";
  const ordinary = createServer((_, answer) => {
    answer.setHeader("content-type", "text/html; charset=utf-8");
    answer.setHeader("cache-control", "max-age=3600");
    answer.end(`<!DOCTYPE html><html lang="en"><title>${text}</title><p>${text} (shown)</p><form><textarea></textarea></form></html>`);
  });
  await new Promise((done) => ordinary.listen(0, "127.0.0.1", done));
  t.after(() => ordinary.close());
  const below = folder(t);
  const browser = await profile(below);
  const page = browser.pages()[0] ?? (await browser.newPage());
  await page.goto(`http://127.0.0.1:${ordinary.address().port}/`);
  await page.locator("textarea").fill(ANOTHER);
  await page.waitForTimeout(WRITTEN_DOWN_AFTER);
  await browser.close();
  const names = found(below, [text, ANOTHER]);
  for (const [what, where] of [["its cache", /Cache.*: Invented: a page/], ["its history", /History.*: Invented: a page/], ["what is open, with what was typed", /Session.*: Invented: typed/]]) {
    assert.ok(names.some((name) => where.test(name)), `${what}: ${names.join("\n")}`);
  }
});
