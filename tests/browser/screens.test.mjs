// Every screen that can be reached, in every state of a diary that we know of: the rules of lib/checks, no
// request that leaves this machine, and a picture of each.

import assert from "node:assert/strict";
import { appendFileSync, existsSync, readdirSync, statSync, truncateSync } from "node:fs";
import { join } from "node:path";
import { after, test } from "node:test";
import { close, visit } from "./lib/browser.mjs";
import { crawl, kind } from "./lib/crawl.mjs";
import { looking } from "./lib/look.mjs";
import { person } from "./lib/person.mjs";
import { begin, during } from "./lib/ways.mjs";
import { ownDiary, programme, serve } from "./lib/server.mjs";

after(close);

const nameOf = (path) => kind(path).replace(/^\//, "").replaceAll("/", "-") || "first-page";

test("every screen of a filled diary", async (t) => {
  const server = await serve(t);
  const { page } = await visit(t, server);
  await page.goto(server.address);
  const looks = looking();
  await crawl(page, ["/", "/today", "/screening", "/hold-questions", "/ready", "/step-check", "/nothing-here"], async (page, path, answer) => {
    await looks.look(page, nameOf(path), answer);
  });
  looks.done({ least: 45 });
});

test("every screen of an empty diary", async (t) => {
  const server = await serve(t, ["--empty", "--now", "2026-05-04T19:30:00+01:00"]);
  const { page } = await visit(t, server);
  const answer = await page.goto(server.address);
  const looks = looking({ prefix: "empty-" });
  await looks.look(page, nameOf(new URL(page.url()).pathname), answer);
  await crawl(page, ["/today"], (page, path, answer) => looks.look(page, nameOf(path), answer));
  looks.done({ least: 35 });
});

test("a form that has to be put right", async (t) => {
  const server = await serve(t);
  const { page } = await visit(t, server);
  await page.goto(server.address);
  const looks = looking({ prefix: "wrong-" });
  const forms = [
    ["/log", "/log"],
    ["/signs", "/signs"],
    ["/spoke", "/spoke"],
    ["/screening", "/screening"],
    ["/hold-questions", "/hold-questions"],
    ["/log/as-planned", "/practice/rate"],
    ["/time-off", "/time-off"],
    ["/questions", "/questions"],
    ["/look-forward", "/look-forward"],
    ["/plan/add", "/plan/add"],
    ["/keeping/passphrase", "/keeping/passphrase"],
    ["/restore/copy", "/restore/copy"],
    ["/erase/days", "/erase/days"],
    ["/summary", "/summary/file"],
    ["/reminders", "/reminders"],
    ["/activities", "/activities"],
  ];
  for (const [path, action] of forms) {
    await page.goto(server.origin + path);
    const form = page.locator(`main form.form[action="${action}"]`).first();
    const [answer] = await Promise.all([
      page.waitForResponse((own) => own.request().method() === "POST"),
      page.waitForEvent("domcontentloaded"),
      form.locator("button").first().click(),
    ]);
    assert.equal(answer.status(), 422, `${path} took an empty form`);
    // WCAG 2.2, 3.3.1 Error Identification, 3.3.3 Error Suggestion: said first, in words, with a way there.
    const alert = page.locator(".problems[role=alert]");
    assert.ok((await alert.innerText()).trim(), `${path}: what is wrong is not said`);
    for (const link of await alert.locator("a").all()) {
      const target = (await link.getAttribute("href")).slice(1);
      await link.click();
      const within = await page.evaluate((id) => document.getElementById(id)?.contains(document.activeElement), target);
      assert.ok(within, `${path}: the link to ${target} does not move the focus there`);
    }
    await looks.look(page, nameOf(path), answer);
  }
  looks.done({ least: forms.length });
});

test("a plan to accept, in cards, and what comes after", async (t) => {
  const server = await serve(t, ["--empty", "--now", "2026-05-04T19:30:00+01:00", "--programme", programme("1-graded-then-positions")]);
  const { page } = await visit(t, server);
  const she = person(page);
  await page.goto(server.address);
  const looks = looking({ prefix: "plan-" });
  await looks.look(page, "accept");
  await she.press('form[action="/plan/accept"]:has([name=answer][value=yes]) button');
  await looks.look(page, "kept");
  await crawl(page, ["/today"], (page, path, answer) => looks.look(page, nameOf(path), answer));
  await page.goto(`${server.origin}/plan/add`);
  await she.upload("file", programme("2-movement-and-partner"));
  await she.press('form[action="/plan/add"] button');
  await looks.look(page, "another");
  await she.press('form[action="/plan/accept"]:has([name=answer][value=no]) button');
  await looks.look(page, "not-yours");
  looks.done({ least: 40 });
});

test("a practice: one question, ready, running, paused, found again, stopped, rated", async (t) => {
  const server = await serve(t);
  const { page } = await visit(t, server);
  const she = person(page);
  await page.goto(server.address);
  const looks = looking({ prefix: "practice-" });
  await she.press('a[href="/breathing"]');
  await she.press(begin("breathing"));
  await looks.look(page, "breathing");
  await she.press(during("begin"));
  await looks.look(page, "breathing-running");
  await she.press(during("pause"));
  await looks.look(page, "breathing-paused");
  await she.press(during("stop"));
  await looks.look(page, "breathing-stopped");
  await page.goto(`${server.origin}/today`);
  await looks.look(page, "today-after-stop");
  await page.goto(`${server.origin}/practice/rate`);
  await looks.look(page, "rate");
  looks.done({ least: 6 });
});
