// The clinician's desk: first use, the copy of the keys, locking; every page of an empty desk.

import assert from "node:assert/strict";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, test } from "node:test";
import { close, visit } from "./lib/browser.mjs";
import { crawl, kind } from "./lib/crawl.mjs";
import { write } from "./lib/compose.mjs";
import { bring, decoded, firstUse } from "./lib/desk.mjs";
import { looking } from "./lib/look.mjs";
import { person } from "./lib/person.mjs";
import { PASSPHRASE, folder, frond, programme, serveDesk } from "./lib/server.mjs";

after(close);

const nameOf = (path) => path.slice(1).replaceAll("/", "-") || "home";

for (const [how, keys] of [["", false], [" with the keyboard alone", true]]) {
  test(`first use: keys, and a copy that opens${how}`, async (t) => {
    const server = await serveDesk(t);
    const { page } = await visit(server);
    const she = person(page, { keys });
    await page.goto(server.address);
    const looks = looking({ prefix: `desk-first-${keys ? "keys-" : ""}` });
    await looks.look(page, "first");
    // A slip in the second passphrase: nothing is made, and it is said at the field.
    await she.type("new", PASSPHRASE);
    await she.type("again", `${PASSPHRASE}.`);
    await she.press('form[action="/first"] button');
    await looks.look(page, "slip");
    assert.equal(await page.locator('[role="alert"] a[href="#again"]').count(), 1);
    const copy = await firstUse(she, folder(t));
    await looks.look(page, "copy-looked-at");
    assert.ok(copy.endsWith(".age"));
    await page.goto(server.origin);
    await looks.look(page, "home");
    await she.press('form[action="/lock"] button');
    assert.equal(new URL(page.url()).pathname, "/open");
    await looks.look(page, "locked");
    await she.type("passphrase", "another one");
    await she.press('form[action="/open"] button');
    await looks.look(page, "not-opened");
    await she.type("passphrase", PASSPHRASE);
    await she.press('form[action="/open"] button');
    assert.equal(new URL(page.url()).pathname, "/");
    looks.done({ least: 6 });
  });
}

test("keys come back from their copy on another computer, and no other file does", async (t) => {
  const one = await serveDesk(t);
  const first = await visit(one);
  await first.page.goto(one.address);
  const copy = await firstUse(person(first.page), folder(t));
  const other = await serveDesk(t);
  const { page } = await visit(other);
  const she = person(page);
  await page.goto(other.address);
  await she.press('a[href="/first/restore"]');
  const wrong = join(folder(t), "wrong.age");
  writeFileSync(wrong, "not a copy of keys\n");
  for (const [path, passphrase] of [[wrong, PASSPHRASE], [copy, "another one"]]) {
    await she.upload("file", path);
    await she.type("passphrase", passphrase);
    await she.press('form[action="/first/restore"] button');
    assert.equal(await page.locator('[role="alert"] a').count(), 1, path);
  }
  await she.upload("file", copy);
  await she.type("passphrase", PASSPHRASE);
  await she.press('form[action="/first/restore"] button');
  assert.equal(new URL(page.url()).pathname, "/");
});

for (const lang of ["en", "es", "ar-XB"]) {
  test(`every page of an empty desk, in ${lang}`, async (t) => {
    const server = await serveDesk(t, ["--language", lang]);
    const { page } = await visit(server);
    await page.goto(server.address);
    await firstUse(person(page), folder(t));
    const looks = looking({ lang, prefix: `desk-empty-${lang}-` });
    await crawl(page, ["/"], (page, path, answer) => looks.look(page, nameOf(kind(path)), answer));
    looks.done({ least: 5 });
  });
}

test("with the keyboard alone: a plan written, signed, a summary read, a rule tried, a letter begun", async (t) => {
  const room = folder(t);
  const server = await serveDesk(t, ["--now", "2026-05-12T09:00:00+01:00"]);
  const { page } = await visit(server, { viewport: { width: 1024, height: 800 } });
  const she = person(page, { keys: true });
  await page.goto(server.address);
  await firstUse(she, room);
  await page.goto(`${server.origin}/programmes`);
  await she.press('form[action="/programmes/new"] button');
  const plan = JSON.parse(readFileSync(programme("3-breathing-only"), "utf8"));
  plan.review_by = "2026-06-30";
  await write(she, plan);
  await page.goto(page.url().replace(/[a-z]+(\?.*)?$/, "check"));
  await she.press('form[action$="/finish"] button');
  await she.press('form[action$="/hand-over"] button');
  await she.choose("way", "open");
  await she.press('form[action="/hand-over/sign"] > button');
  assert.match(await decoded(page, ".scan svg"), /^FROND:/);
  // The program's own invented diary, handed over open.
  const demo = join(room, "demo");
  frond(["demo", "--out", demo]);
  const summary = readdirSync(demo, { recursive: true }).map((name) => join(demo, name)).find((path) => /\/summary\.json$/.test(path));
  assert.ok(summary, "the demo leaves a summary");
  await bring(she, server, summary);
  await page.goto(`${server.origin}/people`);
  await she.press('main a[href^="/people/"]');
  const diary = new URL(page.url()).pathname;
  // What is folded opens.
  for (const fold of (await page.locator("main details").all()).slice(0, 4)) {
    if (await fold.evaluate((own) => own.open)) continue;
    await fold.locator("> summary").focus();
    await page.keyboard.press("Enter");
    assert.ok(await fold.evaluate((own) => own.open));
  }
  await page.goto(`${server.origin}${diary}/rule`);
  await she.type("text", JSON.stringify({ step_back: [], pause: [{ criterion: "days_without_practice", days: 3 }] }));
  await she.press(`form[action="${diary}/rule"] > button`);
  assert.equal(await page.locator('[role="alert"]').count(), 0);
  await page.goto(`${server.origin}${diary}/letter`);
  await she.type("person", "Invented Person");
  await she.press(`form[action="${diary}/letter"] > button`);
  assert.ok((await page.locator('[role="alert"] a').count()) >= 2, "what is missing is linked");
});
