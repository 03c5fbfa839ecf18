// The whole circle in one go: a plan composed from nothing, previewed, signed, its code read by a decoder that
// knows nothing of us, accepted on the other side, a diary kept with it, handed back sealed, opened at the
// desk, another rule tried on it, a letter made, and the next revision handed over and accepted. Everything in
// it is invented.

import assert from "node:assert/strict";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, test } from "node:test";
import { close, picture, visit } from "./lib/browser.mjs";
import { healthWords } from "./lib/checks.mjs";
import { crawl } from "./lib/crawl.mjs";
import { then, write } from "./lib/compose.mjs";
import { decoded, firstUse } from "./lib/desk.mjs";
import { looking } from "./lib/look.mjs";
import { person } from "./lib/person.mjs";
import { folder, ownDiary, programme, serve, serveDesk } from "./lib/server.mjs";
import { answerNoToAll, link, rateAll, send } from "./lib/ways.mjs";

after(close);

const textOf = (page) => page.locator("main").innerText();
const pathOf = (page) => new URL(page.url()).pathname;

/** An invented plan of three sizes whose rule may say "try" after two days; not anybody's advice. */
function invented() {
  const plan = JSON.parse(readFileSync(programme("1-graded-then-positions"), "utf8"));
  plan.steps = plan.steps.slice(0, 3);
  plan.rule.step_up.all_of = [
    { criterion: "sessions", practised_days: 2, within_days: 7 },
    { criterion: "discomfort_at_most", rating: "peak", at_most: 3, last: 2 },
  ];
  return plan;
}

test("the whole circle, from an empty desk to the second revision", async (t) => {
  const room = folder(t);
  const desk = await serveDesk(t, ["--now", "2026-05-04T09:00:00+01:00"]);
  const clinic = await visit(desk, { viewport: { width: 1024, height: 800 } });
  const she = person(clinic.page);
  const looks = looking({ prefix: "circle-" });
  let failed;
  // What comes after a failed step has nothing to stand on.
  const step = async (name, act) => {
    await t.test(name, async () => {
      try {
        await act();
        clinic.check();
      } catch (error) {
        failed = error;
        const stands = await clinic.page.evaluate(() => document.body.innerText.slice(0, 900)).catch(() => "");
        throw new Error(`${error.message}\nthe desk at ${clinic.page.url()}:\n${stands}`, { cause: error });
      }
    });
    if (failed) throw new Error(`the circle ended at "${name}"`);
  };

  await step("first use", async () => {
    await clinic.page.goto(desk.address);
    await firstUse(she, room);
  });

  let stepIds;
  await step("a plan from nothing, said back while it is written", async () => {
    await clinic.page.goto(`${desk.origin}/programmes`);
    await looks.look(clinic.page, "plans-empty");
    await she.press('form[action="/programmes/new"] button');
    // Nothing is filled in beforehand: no field of any page of an empty draft holds anything.
    for (const name of ["who", "steps", "practices", "rule", "signs", "texts"]) {
      await clinic.page.goto(clinic.page.url().replace(/[a-z]+$/, name));
      const filled = await clinic.page.locator("main form.form").evaluate((form) =>
        [...new FormData(form)].filter(([name, value]) => !["shape", "then"].includes(name) && value !== ""),
      );
      assert.deepEqual(filled, [], `${name} is filled in beforehand`);
      await looks.look(clinic.page, `plan-empty-${name}`);
    }
    stepIds = await write(she, invented(), { ownKey: true });
    await clinic.page.goto(clinic.page.url().replace(/[a-z]+(\?.*)?$/, "check"));
    const said = await textOf(clinic.page);
    assert.match(said, /Trainer 1/);
    assert.match(said, /widest diameter/i, "sizes are said as the widest diameter");
    assert.equal(await clinic.page.locator('form[action$="/finish"] button').count(), 1, "nothing is to be put right");
    await looks.look(clinic.page, "plan-check");
  });

  await step("previewed: today, day 7, day 30 of an invented patient", async () => {
    const seen = new Set();
    for (const day of [0, 7, 30]) {
      await clinic.page.goto(clinic.page.url().replace(/(check|preview.*)$/, `preview?ease=easy&day=${day}`));
      const text = await textOf(clinic.page);
      assert.match(text, /invented/i, "it says that the patient is invented");
      seen.add(text);
      await looks.look(clinic.page, `preview-${day}`);
    }
    assert.equal(seen.size, 3, "each day shows another state");
  });

  // Signs what was finished; gives the link as the decoder read it, the words that are spoken, and the file.
  const handOver = async (name) => {
    await she.press('form[action$="/hand-over"] button');
    assert.equal(await clinic.page.locator("main input[name=way]:checked").count(), 0, "open or sealed is chosen, not preset");
    await she.choose("way", "sealed");
    await she.press(send("/hand-over/sign"));
    await looks.look(clinic.page, `handed-${name}`);
    const cards = await clinic.page.locator("main .card .code").allInnerTexts();
    const code = (await clinic.page.locator("main .scan svg").count()) > 0;
    const file = await she.saves('form[action="/hand-over/file"] button');
    const path = join(room, `${name}.json`);
    await file.saveAs(path);
    return { key: cards[0], spoken: cards[1], link: code ? await decoded(clinic.page, ".scan svg") : undefined, path };
  };

  let first;
  await step("signed; its code is read by an independent decoder", async () => {
    await clinic.page.goto(clinic.page.url().replace(/preview.*$/, "check"));
    await she.press('form[action$="/finish"] button');
    await looks.look(clinic.page, "plan-finished");
    first = await handOver("one");
    assert.match(first.link, /^FROND:[A-Z2-7]+$/, "QR alphanumeric mode (ISO/IEC 18004): upper case and digits");
    assert.equal(first.key.split(" ").length, 6);
    await she.press(link("/hand-over/sheet"));
    await looks.look(clinic.page, "sheet");
    assert.equal(await decoded(clinic.page, ".scan svg"), first.link, "the sheet carries the same code");
    const sheet = await textOf(clinic.page);
    assert.ok(!sheet.includes(first.spoken), "the spoken words are not on the sheet");
    assert.ok(sheet.includes(first.key), "the key's words are");
  });

  const own = ownDiary(t);
  const days = ["2026-05-04", "2026-05-05", "2026-05-06", "2026-05-08"];
  const phone = async (day, act) => {
    const server = await serve(t, [...own.args, "--now", `${day}T19:30:00+01:00`]);
    const watched = await visit(server);
    await watched.page.goto(server.address);
    await act(person(watched.page), watched.page, server);
    watched.check();
    for (const leave of server.guests.splice(0)) await leave();
    await server.stop();
  };
  const practise = async (her, page, server, peak) => {
    await page.goto(`${server.origin}/log/as-planned`);
    await rateAll(her, peak);
    await her.press(send("/practice/rate"));
    assert.match(pathOf(page), /^\/kept\//);
  };

  await step("accepted on the other side, from the code and the spoken words", async () => {
    await phone(days[0], async (her, page, server) => {
      await page.goto(`${server.origin}/plan/add`);
      await her.type("link", first.link);
      await her.type("words", "four other wrong words");
      await her.press('form[action="/plan/add"] button');
      assert.equal(await page.locator('[role="alert"]').count(), 1, "other words do not open it");
      // As a messenger breaks it, in small letters.
      await her.type("link", first.link.toLowerCase().replace(/(.{40})/g, "$1\n"));
      await her.type("words", first.spoken.toUpperCase());
      await her.press('form[action="/plan/add"] button');
      assert.ok((await textOf(page)).includes(first.key), "the key's words can be compared");
      assert.equal(await page.locator("main input[name=although]").count(), 0, "nothing has to be chosen knowingly");
      await picture(page, "circle-accept");
      await her.press('form[action="/plan/accept"]:has([name=answer][value=yes]) button');
      await page.goto(`${server.origin}/step-check`);
      await her.press('form[action="/confirm-step"] button');
      await page.goto(`${server.origin}/screening`);
      await answerNoToAll(her);
      await her.press(send("/screening"));
      await practise(her, page, server, "2");
    });
  });

  let summary;
  await step("a diary kept for some days, handed back sealed", async () => {
    await phone(days[1], (her, page, server) => practise(her, page, server, "3"));
    await phone(days[2], (her, page, server) => practise(her, page, server, "rather_not_say"));
    await phone(days[3], async (her, page, server) => {
      await practise(her, page, server, "1");
      await page.goto(`${server.origin}/suggestion`);
      await page.goto(`${server.origin}/questions`);
      await her.type("text", "an invented question for the visit");
      await her.press('main form[action="/questions"] > button');
      await page.goto(`${server.origin}/summary`);
      await her.choose("way", "recipients");
      await her.tick("alone", "yes");
      const file = await her.saves(send("/summary/file"));
      summary = join(room, "summary.age");
      await file.saveAs(summary);
      assert.match(readFileSync(summary, "latin1"), /^age-encryption.org\/v1/, "sealed to the clinic's key");
    });
  });

  let diary;
  await step("opened at the desk", async () => {
    await clinic.page.goto(`${desk.origin}/bring`);
    await looks.look(clinic.page, "bring");
    await she.upload("files", summary);
    await she.press('form[action="/bring"] button');
    await clinic.page.goto(`${desk.origin}/bring/now`);
    await looks.look(clinic.page, "brought");
    await clinic.page.goto(`${desk.origin}/people`);
    await looks.look(clinic.page, "people");
    await she.press('main a[href^="/people/"]');
    diary = pathOf(clinic.page);
    const text = await textOf(clinic.page);
    const places = ["time alone", "an invented question"].map((own) => text.toLowerCase().indexOf(own));
    assert.ok(places[0] >= 0 && places[0] < 400, `time alone is asked for at the very top: ${places}`);
    assert.ok((await clinic.page.locator("main svg[role=img]").count()) >= 3, "three charts");
    for (const chart of await clinic.page.locator("main svg[role=img]").all()) {
      assert.ok((await chart.locator("title").textContent()).trim() && (await chart.locator("desc").textContent()).trim());
    }
    await looks.look(clinic.page, "visit-page");
  });

  await step("another rule tried on the same diary, and made a revision", async () => {
    const rule = invented().rule;
    // The second session was rated 3: under this rule it would have paused.
    rule.pause = [{ criterion: "discomfort_at_least", rating: "peak", at_least: 3, window: { sessions: 1, of_last: 1 } }];
    const path = join(room, "rule.json");
    writeFileSync(path, JSON.stringify(rule));
    await clinic.page.goto(`${desk.origin}${diary}/rule`);
    await she.upload("file", path);
    await she.press(`form[action="${diary}/rule"] button`);
    await looks.look(clinic.page, "what-if");
    assert.ok((await clinic.page.locator("main table tbody tr").count()) >= 1, "both stand side by side");
    await she.press('form[action$="/revise"] button');
    assert.match(pathOf(clinic.page), /^\/programmes\/[0-9a-f]{32}\//);
    await clinic.page.goto(clinic.page.url().replace(/[a-z]+(\?.*)?$/, "rule"));
    await then(she, "save");
    await clinic.page.goto(clinic.page.url().replace(/rule(\?.*)?$/, "differences"));
    assert.match(await textOf(clinic.page), /pausing/i, "what is different is said");
    await looks.look(clinic.page, "differences");
    await clinic.page.goto(clinic.page.url().replace(/differences$/, "check"));
    await she.press('form[action$="/finish"] button');
  });

  await step("the next revision handed over and accepted", async () => {
    const second = await handOver("two");
    assert.equal(second.key, first.key, "the same key signs");
    await phone("2026-05-09", async (her, page, server) => {
      await page.goto(`${server.origin}/plan/add`);
      await her.upload("file", second.path);
      await her.press('form[action="/plan/add"] button');
      assert.equal(await page.locator("main input[name=although]").count(), 0, "a later revision of a known key asks nothing more");
      await her.press('form[action="/plan/accept"]:has([name=answer][value=yes]) button');
      assert.match(pathOf(page), /^\/kept\//);
      // The older one again is a deliberate choice.
      await page.goto(`${server.origin}/plan/add`);
      await her.upload("file", first.path);
      await her.press('form[action="/plan/add"] button');
      assert.equal(await page.locator("main input[name=although][value=older_revision]").count(), 1);
      assert.equal(await page.locator("main input[name=although]:checked").count(), 0);
    });
  });

  await step("a letter for the referrer, as PDF", async () => {
    await clinic.page.goto(`${desk.origin}${diary}`);
    await letter(she, clinic.page, diary, room, looks);
  });

  await step("every other page that can be reached from here", async () => {
    await clinic.page.goto(desk.origin);
    await crawl(clinic.page, ["/"], (page, path, answer) => looks.look(page, `page${path.replaceAll("/", "-")}`, answer));
  });

  looks.done({ least: 40 });
});

/** Identity and what is asked for are typed here; without the person's agreement there is no letter. */
async function letter(she, page, diary, room, looks) {
  await she.press(link(`${diary}/out`));
  await looks.look(page, "out");
  await she.press(link(`${diary}/letter`));
  const form = send(`${diary}/letter`);
  await she.type("person", "Invented Person");
  await she.type("to", "Dr Invented\nInvented Street 1");
  await she.type("from", "Ada Invented");
  await she.type("request", "Please look at the invented scar.");
  await she.press(form);
  assert.equal(await page.locator('[role="alert"] a[href="#agreed"]').count(), 1, "no letter without her agreement");
  assert.equal(await page.locator('main [name="person"]').inputValue(), "Invented Person", "nothing typed is lost");
  await looks.look(page, "letter-not-agreed");
  await she.tick("agreed", "yes");
  await she.press(form);
  const text = await textOf(page);
  assert.match(text, /Please look at the invented scar/);
  assert.ok(!/invented question|time alone/i.test(text), "what she asked her clinician goes into no letter");
  await looks.look(page, "letter");
  const file = await she.saves(`main form[action="${diary}/letter/pdf"] button`);
  assert.deepEqual(healthWords(file.suggestedFilename()), []);
  const pdf = join(room, "letter.pdf");
  await file.saveAs(pdf);
  // ISO 32000-1: the header, a tagged document, its language.
  const bytes = readFileSync(pdf, "latin1");
  assert.match(bytes, /^%PDF-1\.\d/);
  for (const key of ["/StructTreeRoot", "/MarkInfo", "/Lang"]) assert.ok(bytes.includes(key), key);
}
