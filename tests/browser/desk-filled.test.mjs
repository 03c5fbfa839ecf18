// The desk's pages with something on them: a draft that has one of nearly everything, as written and with what has
// to be put right, and the pages of summaries that only a full cabinet has.

import assert from "node:assert/strict";
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, test } from "node:test";
import { close, visit } from "./lib/browser.mjs";
import { then, write } from "./lib/compose.mjs";
import { bring, firstUse } from "./lib/desk.mjs";
import { looking } from "./lib/look.mjs";
import { person } from "./lib/person.mjs";
import { folder, frond, programme, serveDesk } from "./lib/server.mjs";

after(close);

test("a filled draft, right and wrong", async (t) => {
  const server = await serveDesk(t, ["--now", "2026-05-12T09:00:00+01:00"]);
  const { page } = await visit(server);
  const she = person(page);
  await page.goto(server.address);
  await firstUse(she, folder(t));
  await page.goto(`${server.origin}/programmes`);
  await she.press('form[action="/programmes/new"] button');
  const draft = page.url().replace(/\/who.*$/, "");
  const plan = JSON.parse(readFileSync(programme("5-scar-after-birth"), "utf8"));
  const other = JSON.parse(readFileSync(programme("3-breathing-only"), "utf8"));
  plan.practices = other.practices;
  plan.goals = ["An invented goal"];
  plan.activities = ["An invented activity"];
  plan.own_cautions = ["An invented caution."];
  plan.recipients = [{ name: "Ada Invented", key: "no key" }];
  await write(she, plan);
  const looks = looking({ prefix: "desk-filled-" });
  const pages = ["who", "steps", "steps/0", "steps/1", "practices", "rule", "signs", "texts"];
  for (const name of pages) {
    await page.goto(`${draft}/${name}?saved=yes`);
    await looks.look(page, name.replace("/", "-"));
  }
  assert.ok((await page.locator('[role="alert"] a').count()) >= 1, "a key that is none has to be put right");
  await page.goto(`${draft}/check`);
  await looks.look(page, "check-missing");
  await page.goto(`${draft}/steps`);
  await she.press('main form.form button.press[name=then][value="remove:steps.0"]');
  await looks.look(page, "taken-out");
  await page.goto(`${server.origin}/programmes`);
  await looks.look(page, "plans");
  looks.done({ least: 11 });
});

test("summaries: notes, an older one, a rule over all", async (t) => {
  const room = folder(t);
  const server = await serveDesk(t, ["--now", "2026-05-12T09:00:00+01:00"]);
  const { page } = await visit(server);
  const she = person(page);
  await page.goto(server.address);
  await firstUse(she, room);
  frond(["demo", "--out", join(room, "demo")]);
  await bring(she, server, join(room, "demo", "summary.json"));
  const looks = looking({ prefix: "desk-filled-" });
  const one = await page.locator('main a[href^="/summaries/"]').first().getAttribute("href");
  await page.goto(server.origin + one);
  await looks.look(page, "one-summary");
  await page.goto(`${server.origin}/people`);
  await she.press('main a[href^="/people/"]');
  const diary = new URL(page.url()).pathname;
  await looks.look(page, "visit-page");
  await page.goto(`${server.origin}${diary}/notes`);
  await looks.look(page, "notes");
  await page.goto(`${server.origin}/rules`);
  await she.type("text", JSON.stringify({ pause: [{ criterion: "days_without_practice", days: 3 }] }));
  await she.press('form[action="/rules"] > button');
  for (let again = 0; (await page.locator("main progress").count()) > 0; again++) {
    assert.ok(again < 100, "it is worked out at last");
    await page.waitForTimeout(200);
    await page.goto(`${server.origin}/rules/now`);
  }
  await looks.look(page, "rule-over-all");
  looks.done({ least: 4 });
});

test("two phones that keep one diary, and how old the news is when the plan is revised", async (t) => {
  const room = folder(t);
  const server = await serveDesk(t, ["--now", "2026-05-20T09:00:00+01:00"]);
  const { page } = await visit(server);
  const she = person(page);
  await page.goto(server.address);
  await firstUse(she, room);
  frond(["demo", "--out", join(room, "demo")]);
  const secret = join(room, "secret");
  // The invented passphrase of the demo, as its README says it.
  writeFileSync(secret, "kettle orchard invented lantern\n", { mode: 0o600 });
  cpSync(join(room, "demo/diary"), join(room, "other"), { recursive: true });
  const kept = (diary, now, command, ...more) =>
    frond([command, "--diary", join(room, diary), "--passphrase-file", secret, "--now", now, ...more]);
  kept("other", "2026-05-10T20:00:00+01:00", "sign", "--sign", "fever");
  const made = ["one", "two"].map((name) => join(room, name));
  made.forEach((out) => mkdirSync(out));
  kept("other", "2026-05-10T20:10:00+01:00", "summary", "--open", "--yes", "--out", made[0]);
  kept("demo/diary", "2026-05-11T09:00:00+01:00", "summary", "--open", "--yes", "--out", made[1]);
  const files = made.map((out) => join(out, readdirSync(out).find((name) => name.endsWith(".json"))));
  await bring(she, server, files);
  await page.goto(`${server.origin}/people`);
  await she.press('main a[href^="/people/"]');
  const looks = looking({ prefix: "desk-filled-" });
  await looks.look(page, "went-apart");
  const said = await page.locator("main").innerText();
  assert.match(said, /holds 1 entry/);
  assert.match(said, /A sign is noted there\./);
  assert.ok(said.indexOf("holds 1 entry") < said.indexOf("Everything here is self-reported"), "it comes first");
  await she.press('form[action$="/revise"] button');
  await looks.look(page, "news-who");
  await page.goto(page.url().replace("/who", "/check"));
  await looks.look(page, "news-check");
  assert.match(await page.locator("main").innerText(), /It is 9 days old\./);
  looks.done({ least: 3 });
});
