// The desk's pages with something on them: a draft that has one of nearly everything, as written and with what has
// to be put right, and the pages of summaries that only a full cabinet has.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
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
