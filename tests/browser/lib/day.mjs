// The whole day of one person, from a diary that does not exist yet to one that is gone. Decides the order of
// what is done and what must be true after each step; in every language and with any way of pressing.

import assert from "node:assert/strict";
import { existsSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import addFormats from "ajv-formats";
import { visit } from "./browser.mjs";
import { healthWords } from "./checks.mjs";
import { events } from "./ics.mjs";
import { person } from "./person.mjs";
import { PROJECT, folder, ownDiary, programme, serve } from "./server.mjs";
import { answerNoToAll, begin, during, link, rateAll, send } from "./ways.mjs";

/** An invented plan whose rule may say "try" after one full session; not anybody's advice. */
function quickPlan(t) {
  const plan = JSON.parse(readFileSync(programme("1-graded-then-positions"), "utf8"));
  plan.rule.step_up = {
    all_of: [
      { criterion: "sessions", practised_days: 1, within_days: 7 },
      { criterion: "discomfort_at_most", rating: "peak", at_most: 3, last: 1 },
    ],
  };
  const path = join(folder(t), "plan.json");
  writeFileSync(path, JSON.stringify(plan));
  return path;
}

const textOf = (page) => page.locator("main").innerText();
const pathOf = (page) => new URL(page.url()).pathname;

/**
 * Lives the whole day. `options` goes to the browser, `keys` is for a person with the keyboard alone, `large`
 * for one whose text is twice as large.
 */
export async function wholeDay(t, { language, keys = false, large = false, options = {}, seen = async () => {} }) {
  const own = ownDiary(t);
  const start = (now) => serve(t, [...own.args, "--language", language, "--now", now]);
  let server = await start("2026-05-04T19:30:00+01:00");
  const watched = await visit(server, { locale: language === "es" ? "es-ES" : "en-GB", ...options });
  const { page } = watched;
  if (large) {
    await watched.context.addInitScript(() =>
      document.addEventListener("DOMContentLoaded", () => (document.documentElement.style.fontSize = "200%")),
    );
  }
  const she = person(page, { keys });
  // What comes after a failed step has nothing to stand on.
  const step = async (name, act) => {
    let failed;
    await t.test(name, async () => {
      try {
        await act();
        watched.check();
      } catch (error) {
        failed = error;
        const stands = await page.evaluate(() => document.body.innerText.slice(0, 600)).catch(() => "");
        const at = `\nat ${page.url().replace(/enter=.*/, "enter=...")}:\n${stands}`;
        throw new Error(error.message + at, { cause: error });
      }
    });
    if (failed) throw new Error(`the day ended at "${name}"`);
  };
  // Over Today and More, as a person finds it.
  const home = () => she.press("header a.name");
  const goTo = async (to) => {
    await home();
    if ((await page.locator(link(to)).count()) === 0) await she.press(link("/more"));
    await she.press(link(to));
  };

  await step("first run: breathe first", async () => {
    await page.goto(server.address);
    assert.equal(pathOf(page), "/first/breathe");
    assert.equal(await page.locator("html").getAttribute("lang"), language);
    await seen(page, "first-run");
    await she.press(link("/breathing"));
    await she.press(begin("breathing"));
    await she.press(during("begin"));
    await page.locator("[data-practice][data-runs=true]").waitFor();
    await seen(page, "breathing");
    await she.press(during("stop"));
    // "You stopped, that is always right": an h1, and the rest can wait.
    assert.equal(await page.locator(`h1`).count(), 1);
    await she.press(link("/practice/rate"));
    await rateAll(she, "rather_not_say");
    await she.press(send("/practice/rate"));
    assert.match(pathOf(page), /^\/kept\//);
  });

  await step("a plan in cards: is this yours, is this what you use now", async () => {
    await goTo("/plan/add");
    await she.upload("file", quickPlan(t));
    await she.press('form[action="/plan/add"] > button');
    assert.ok((await page.locator("main .card").count()) >= 4, "the plan is shown in cards");
    assert.match(await textOf(page), /Ada Invented/);
    await seen(page, "cards");
    // Nobody signed it: that has to be said knowingly, and is chosen by nobody else.
    await she.tick("although", "unsigned");
    await she.press('form[action="/plan/accept"]:has([name=answer][value=yes]) button');
    assert.match(pathOf(page), /^\/kept\//);
    await she.press(link("/step-check"));
    await she.press('form[action="/confirm-step"] button');
  });

  await step("the list of cautions", async () => {
    await she.press(link("/screening"));
    // Nothing is answered beforehand, and there is no "all no".
    assert.equal(await page.locator("main input:checked").count(), 0);
    await answerNoToAll(she);
    await seen(page, "cautions");
    await she.press(send("/screening"));
    assert.match(pathOf(page), /^\/kept\//);
  });

  await step("a timed session: reloaded, the program killed, found again, gone on with", async () => {
    await home();
    await she.press(begin("step"));
    if ((await page.locator('form[action="/practice/new"]').count()) > 0) {
      await she.press('form[action="/practice/new"]:has([value=nothing_new]) button');
    }
    await she.press(during("begin"));
    const millis = async () => Number(await page.locator("[data-practice]").getAttribute("data-millis"));
    const before = await millis();
    await page.waitForTimeout(1100);
    await page.reload();
    const after = await millis();
    assert.ok(after >= before + 1000, `the clock went on over a reload: ${before}, ${after} ms`);
    // The script says every few seconds that the page is there; what was noted last is what survives.
    await page.waitForResponse((answer) => answer.url().endsWith("/practice/seen"));
    await server.kill();
    const stopped = server;
    server = await start("2026-05-04T19:40:00+01:00");
    assert.notEqual(server.child.pid, stopped.child.pid);
    watched.moveTo(server);
    await page.goto(server.address);
    assert.equal(pathOf(page), "/practice");
    const choices = page.locator('form[action="/practice/found"] [name=choice]');
    assert.deepEqual(await choices.evaluateAll((all) => all.map((one) => one.value).sort()), ["discard", "finish", "go_on"]);
    await seen(page, "found");
    await she.press('form[action="/practice/found"]:has([value=go_on]) button');
    if ((await page.locator(during("go_on")).count()) > 0) await she.press(during("go_on"));
    const found = await millis();
    assert.ok(found >= 1000 && found < 60_000, `practised time survives and nothing is added while it was dead: ${found} ms`);
    await she.press(during("enough"));
  });

  await step("rated", async () => {
    await she.press(link("/practice/rate"));
    assert.equal(await page.locator("main form.form input:checked").count(), 0, "nothing is chosen beforehand");
    await rateAll(she, "2");
    await seen(page, "rate");
    await she.press(send("/practice/rate"));
    assert.match(pathOf(page), /^\/kept\//);
    // And a second one without the clock, that went as planned: in three taps.
    await goTo("/log/as-planned");
    await rateAll(she, "2");
    await she.press(send("/practice/rate"));
    assert.match(pathOf(page), /^\/kept\//);
  });

  await step("what the plan says, why, and staying", async () => {
    await she.press(link("/suggestion"));
    const text = await textOf(page);
    assert.match(text, /Ada Invented/, "whose rule it is");
    await she.unfold("main details:has(.reason)");
    assert.ok((await page.locator("main .reason").count()) >= 2, "each condition with what was found");
    await seen(page, "reasons");
    const one = (chosen) => page.locator(`form[action="/choose"]:has([name=chosen][value=${chosen}]) button`);
    // Trying and staying are offered alike.
    const box = async (chosen) => (await one(chosen).boundingBox()).height;
    assert.equal(await box("try"), await box("stay"));
    assert.equal(await one("try").getAttribute("class"), await one("stay").getAttribute("class"));
    await she.press('form[action="/choose"]:has([name=chosen][value=stay]) button');
    assert.match(pathOf(page), /^\/kept\//);
  });

  await step("a reminder, and its calendar file", async () => {
    await goTo("/reminders");
    await she.press('form[action="/reminders"]:has([name=what][value=on]) button');
    await she.choose("practice", await page.locator("main input[name=practice]").first().getAttribute("value"));
    await she.tick("on", "1");
    await she.tick("on", "4");
    await she.type("at", "20:00");
    await she.press('form[action="/reminders"]:has([name=what][value=add]) > button');
    await seen(page, "reminders");
    const file = await she.saves('form[action="/reminders/calendar"] button');
    assert.match(file.suggestedFilename(), /\.ics$/);
    assert.deepEqual(healthWords(file.suggestedFilename()), [], "the file name is neutral");
    const text = readFileSync(await file.path(), "utf8");
    const all = events(text);
    assert.ok(all.length >= 1);
    assert.ok(all.every((event) => /FREQ=WEEKLY/.test(event.get("RRULE")) && /BYDAY=.*MO/.test(event.get("RRULE"))));
    assert.deepEqual(healthWords(text), [], "a calendar is seen by others: neutral words");
  });

  await step("a correction of an entry", async () => {
    await goTo("/entries");
    await she.press('main a[href^="/entry/"]');
    for (let back = 0; (await page.locator('main a[href$="/correct"]').count()) === 0 || !(await isSession(page)); back++) {
      assert.ok(back < 12, "a session that can be put right");
      await page.goBack();
      await she.press(`:nth-match(main a[href^="/entry/"], ${back + 2})`);
    }
    const entry = pathOf(page);
    await she.press('main a[href$="/correct"]');
    assert.ok(await page.locator("main [name=peak][value='2']").isChecked(), "what stands there is filled in");
    await she.choose("peak", "3");
    await she.press(`main form[action="${entry}/correct"] > button`);
    await page.goto(server.origin + entry);
    assert.ok((await page.locator("main .card").count()) >= 1, "the first version stays visible");
    await seen(page, "corrected");
  });

  await step("a sign: stop and call, in order; cleared by a talk", async () => {
    await stopAndCall(she, "more_than_a_little_bleeding", { emergency: false, language });
    await seen(page, "call");
    await home();
    assert.equal(await page.locator(begin("step")).count(), 0, "no practice with trainers is offered meanwhile");
    await stopAndCall(she, "numb_saddle", { emergency: true, language });
    await seen(page, "call-emergency");
    await goTo("/spoke");
    assert.equal(await page.locator("main input:checked").count(), 0);
    await she.type("with", "Ada Invented");
    const open = page.locator("main input[name=open]");
    const values = await open.evaluateAll((all) => all.map((one) => one.value));
    assert.ok(values.length >= 2, "both signs are open");
    for (const value of values) await she.tick("open", value);
    if ((await page.locator("main input[name=pause]").count()) > 0) await she.tick("pause", "yes");
    await she.press(send("/spoke"));
    assert.match(pathOf(page), /^\/kept\//);
    await home();
    assert.equal(await page.locator(link("/call")).count(), 0, "nothing asks to call any more");
  });

  await step("a summary for the clinician, as a file", async () => {
    await goTo("/summary");
    assert.equal(await page.locator("main input[name=way]:checked").count(), 0, "who can open it is not preset");
    await she.choose("way", "open");
    const file = await she.saves(send("/summary/file"));
    assert.deepEqual(healthWords(file.suggestedFilename()), []);
    const summary = JSON.parse(readFileSync(await file.path(), "utf8"));
    const ajv = new Ajv2020({ strict: false, allErrors: true, logger: false });
    addFormats.default(ajv);
    const valid = ajv.compile(JSON.parse(readFileSync(join(PROJECT, "fixtures/schema/summary.schema.json"), "utf8")));
    assert.ok(valid(summary), JSON.stringify(valid.errors));
    // The core's own reader as well.
    await seen(page, "summary");
  });

  await step("everything erased", async () => {
    await goTo("/settings");
    await she.press(link("/erase/all"));
    await seen(page, "erase");
    await she.press('main form[action="/erase/all"] button');
    await seen(page, "erased");
    const left = existsSync(own.folder) ? readdirSync(own.folder, { recursive: true, withFileTypes: true }) : [];
    // The file that says the folder is in use holds nothing.
    const told = left.filter((own) => own.isFile() && own.name !== "lock");
    assert.deepEqual(told.map((own) => own.name), [], "no file of the diary is left");
    if (existsSync(join(own.folder, "lock"))) assert.equal(readFileSync(join(own.folder, "lock")).length, 0);
    // Cache-Control: no-store (RFC 9111, 5.2.2.5): going back asks again, and there is nothing.
    const erased = await textOf(page);
    await page.goBack();
    assert.equal(await textOf(page), erased);
    await page.goBack();
    assert.equal(await textOf(page), erased);
  });
}

async function isSession(page) {
  const to = await page.locator('main a[href$="/correct"]').first().getAttribute("href");
  const text = await page.evaluate(async (to) => (await fetch(to)).text(), to);
  return text.includes('name="peak"');
}

// The lines of "stop and call", as the English says them, in the order that the project's rule asks for.
const LINES = {
  number: /call 999/i,
  stop: /stop now/i,
  contact: /Willow Lane clinic/,
  aloud: /read this out/i,
  nobody: /nobody has been told/i,
  right: /you did right to stop/i,
  later: /spoken with someone/i,
};
const ORDER = {
  emergency: ["number", "stop", "contact", "aloud", "nobody", "right", "later"],
  other: ["stop", "contact", "aloud", "nobody", "right", "later"],
};

/** Reports a sign; what comes has the order of lines of the clinical rule. */
async function stopAndCall(she, sign, { emergency, language }) {
  const { page } = she;
  await she.press('header a[href="/signs"]');
  assert.equal(await page.locator("main input:checked").count(), 0);
  await she.tick("sign", sign);
  await she.press(send("/signs"));
  const text = await textOf(page);
  if (language === "en") {
    const order = ORDER[emergency ? "emergency" : "other"];
    const places = order.map((line) => text.search(LINES[line]));
    assert.ok(!places.includes(-1), `a line is missing: ${order.filter((_, at) => places[at] === -1)}`);
    assert.deepEqual(places, [...places].sort((one, other) => one - other), "in this order");
  }
  // A number is one tap away, and in an emergency nothing comes before it.
  const dials = await page.evaluate(() =>
    [...document.querySelectorAll("main a, main button")].map((own) => own.getAttribute("href") ?? ""),
  );
  const numbers = dials.filter((to) => to.startsWith("tel:")).map((to) => to.replace(/\D/g, ""));
  assert.ok(numbers.includes("01632960123"), "the named contact");
  assert.ok(numbers.includes("999"), "the number of the plan");
  assert.equal(dials[0], emergency ? "tel:999" : dials[0]);
  if (emergency) assert.ok(text.indexOf("999") < text.indexOf("01632"), "the number first");
  else assert.equal(numbers[0], "01632960123", "the contact first");
}
