// The screens that only something done leads to: a form to put right, a plan to accept, a practice, a sign, a
// diary that does not open. The same rules and pictures as for every other screen.

import assert from "node:assert/strict";
import { closeSync, openSync, readdirSync, statSync, writeSync } from "node:fs";
import { join } from "node:path";
import { after, test } from "node:test";
import { close, visit } from "./lib/browser.mjs";
import { crawl, kind } from "./lib/crawl.mjs";
import { looking } from "./lib/look.mjs";
import { person } from "./lib/person.mjs";
import { ownDiary, programme, serve } from "./lib/server.mjs";
import { answerNoToAll, begin, during, link, rateAll, send } from "./lib/ways.mjs";

after(close);

/** What a picture is called. */
const nameOf = (path) => kind(path).replace(/^\//, "").replaceAll("/", "-") || "first-page";

test("a form that has to be put right", async (t) => {
  const server = await serve(t);
  const { page } = await visit(server);
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
    ["/keeping/code", "/keeping/code"],
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
      page.waitForEvent("load"),
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
  const { page } = await visit(server);
  const she = person(page);
  await page.goto(server.address);
  const looks = looking({ prefix: "plan-" });
  await looks.look(page, "accept");
  // Nobody signed it: that has to be said knowingly, and is chosen by nobody else.
  await she.tick("although", "unsigned");
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

test("a practice: one question, ready, running, paused, stopped, rated", async (t) => {
  const server = await serve(t);
  const { page } = await visit(server);
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
  await rateAll(she, "2");
  await she.press(send("/practice/rate"));
  await looks.look(page, "kept");
  await page.goto(`${server.origin}/today`);
  await she.press(begin("step"));
  if ((await page.locator('form[action="/practice/new"]').count()) > 0) {
    await looks.look(page, "anything-new");
    await she.press('form[action="/practice/new"]:has([value=nothing_new]) button');
  }
  await looks.look(page, "ready");
  await she.press(during("begin"));
  await looks.look(page, "running");
  await she.press(during("pause"));
  await looks.look(page, "paused");
  looks.done({ least: 10 });
});

test("a sign that pauses, one that asks first, an emergency; a talk", async (t) => {
  const server = await serve(t);
  const { page } = await visit(server);
  const she = person(page);
  await page.goto(server.address);
  const looks = looking({ prefix: "sign-" });
  const report = async (sign, name) => {
    await page.goto(`${server.origin}/signs`);
    await she.tick("sign", sign);
    await she.press(send("/signs"));
    await looks.look(page, name);
    await page.goto(`${server.origin}/today`);
    await looks.look(page, `${name}-today`);
  };
  await report("more_than_a_little_bleeding", "pause");
  for (const path of ["/practices", "/suggestion", "/spoke", "/breathing", "/step-check"]) {
    await page.goto(server.origin + path);
    await looks.look(page, `pause${path.replaceAll("/", "-")}`);
  }
  await report("numb_saddle", "emergency");
  for (const path of ["/practices", "/breathing", "/call"]) {
    await page.goto(server.origin + path);
    await looks.look(page, `emergency${path.replaceAll("/", "-")}`);
  }
  await page.goto(`${server.origin}/spoke`);
  await she.type("with", "Ida Marlowe (invented)");
  for (const value of await page.locator("main input[name=open]").evaluateAll((all) => all.map((own) => own.value))) await she.tick("open", value);
  await she.press(send("/spoke"));
  await looks.look(page, "spoke-kept");
  looks.done({ least: 12 });
});

test("the cautions answered one by one, a reminder set, everything erased", async (t) => {
  const server = await serve(t);
  const { page } = await visit(server);
  const she = person(page);
  await page.goto(server.address);
  const looks = looking({ prefix: "done-" });
  await page.goto(`${server.origin}/screening`);
  await answerNoToAll(she);
  await she.press(send("/screening"));
  await looks.look(page, "screening");
  await page.goto(`${server.origin}/reminders`);
  await she.press('form[action="/reminders"]:has([name=what][value=on]) button');
  await she.choose("practice", "trainer");
  await she.tick("on", "1");
  await she.type("at", "20:00");
  await she.press('form[action="/reminders"]:has([name=what][value=add]) > button');
  await looks.look(page, "reminders");
  await page.goto(`${server.origin}/erase/all`);
  await she.press('main form[action="/erase/all"] button');
  await looks.look(page, "erased");
  looks.done({ least: 3 });
});

test("its own code and the twelve words: chosen, asked for, wrong, a wait, the words instead", async (t) => {
  const server = await serve(t, ["--empty", "--now", "2026-05-04T19:30:00+01:00"]);
  const { page } = await visit(server);
  const she = person(page);
  await page.goto(server.address);
  const looks = looking({ prefix: "own-" });
  await page.goto(`${server.origin}/keeping/phrase`);
  await looks.look(page, "words");
  const words = await page.locator("main ol li").allInnerTexts();
  assert.equal(words.length, 12);
  await she.press('main form[action="/keeping/phrase"] button');
  await looks.look(page, "words-asked");
  for (const [name, at] of [["word-3", 2], ["word-9", 8]]) await she.type(name, words[at].trim());
  await she.press('main form[action="/keeping/phrase"] button');
  await looks.look(page, "words-kept");
  await page.goto(`${server.origin}/keeping/copy`);
  await looks.look(page, "copy");
  await page.goto(`${server.origin}/keeping/code`);
  await looks.look(page, "code-choose");
  for (const name of ["new", "again"]) await she.type(name, "4711");
  await she.press('main form[action="/keeping/code"] button');
  await looks.look(page, "code-set");
  await page.reload();
  assert.match(page.url(), /\/done$/, "looked at again, it is not done again");
  await page.goto(`${server.origin}/keeping`);
  await she.press('main form[action="/lock"] button');
  await looks.look(page, "code-asked");
  for (let tries = 0; tries < 12 && (await page.locator("main input[name=code]").count()) > 0; tries++) {
    await she.type("code", "1111");
    await she.press('main form[action="/code"] button');
    if (tries === 0) await looks.look(page, "code-wrong");
  }
  assert.equal(await page.locator("main input[name=code]").count(), 0, "after some wrong ones there is a wait");
  await looks.look(page, "code-wait");
  await she.press(link("/open"));
  await looks.look(page, "code-forgotten");
  await she.type("phrase", words.map((word) => word.trim()).join(" "));
  await she.press('main form[action="/open"] button');
  await looks.look(page, "code-opened");
  await page.goto(`${server.origin}/today`);
  assert.equal(await page.locator("main input[name=code]").count(), 0, "it is open, and has no code");
  looks.done({ least: 10 });
});

test("a diary that was damaged still leads on", async (t) => {
  const own = ownDiary(t);
  const first = await serve(t, own.args);
  await first.stop();
  // Every file of the keys is overwritten: nothing opens it any more.
  const files = readdirSync(own.folder, { recursive: true }).map((name) => join(own.folder, name));
  const broken = files.filter((path) => statSync(path).isFile() && /key/.test(path));
  assert.ok(broken.length > 0, "there is a file of keys");
  for (const path of broken) {
    const file = openSync(path, "r+");
    writeSync(file, Buffer.alloc(statSync(path).size, "x"));
    closeSync(file);
  }
  const server = await serve(t, own.args);
  const { page } = await visit(server);
  const answer = await page.goto(server.address);
  assert.equal(answer.status(), 503);
  const looks = looking({ prefix: "damaged-" });
  await looks.look(page, "diary", answer);
  assert.ok((await page.locator("main a, main button").count()) >= 1, "there is something to do next");
  looks.done({ least: 1 });
});
