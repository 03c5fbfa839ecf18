// The breath to follow, against a schedule of its own: three minutes of the page with a clock that the test
// holds, each change of breath within 50 ms of where it belongs.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { close, picture, visit } from "./lib/browser.mjs";
import { person } from "./lib/person.mjs";
import { serve } from "./lib/server.mjs";
import { begin, during, link } from "./lib/ways.mjs";

after(close);

/** How far what is shown may be from the schedule. */
const NEAR = 50;
/** How finely the page is looked at; under half of NEAR, so that the looking itself fits into it. */
const LOOK = 20;
const THREE_MINUTES = 180_000;

/** When each phase begins, from the lengths of the phases alone. Written for this test, not taken from the page. */
function schedule(phases, whole) {
  const begins = [];
  for (let at = 0, breath = 0; at < whole; breath++) {
    for (const { phase, millis } of phases) {
      if (millis === 0) continue;
      if (at < whole) begins.push({ at, key: `${breath} ${phase}` });
      at += millis;
    }
  }
  return [...begins, { at: whole, key: "over" }];
}

async function breathing(t, options = {}, before = async () => {}) {
  const server = await serve(t, ["--empty", "--now", "2026-05-04T19:30:00+01:00"]);
  const watched = await visit(server, options);
  const { page } = watched;
  const she = person(page);
  await page.goto(server.address);
  await before(she);
  await page.goto(`${server.origin}/breathing`);
  await she.press(begin("breathing"));
  // Everything that could be heard or felt, counted from before the page's own script begins.
  await page.addInitScript(() => {
    window.heard = { tone: 0, word: 0, vibration: 0 };
    class Quiet extends AudioContext {
      createOscillator() {
        window.heard.tone++;
        return super.createOscillator();
      }
    }
    window.AudioContext = Quiet;
    window.speechSynthesis.speak = () => window.heard.word++;
    navigator.vibrate = () => ++window.heard.vibration > 0;
  });
  await page.clock.install();
  // Time stands still from here on but for what the test lets pass.
  await page.clock.pauseAt(Date.now() + 1000);
  await she.press(during("begin"));
  return { ...watched, server, she };
}

// Every change of what is shown, with the faked time at which it was seen first.
async function followed(page, until) {
  const found = [];
  const place = page.locator("[data-practice]");
  const before = Number(await place.getAttribute("data-millis"));
  const pacer = JSON.parse(await place.getAttribute("data-pacer"));
  let passed = 0;
  let last;
  const look = async () => {
    const seen = await page.evaluate(() => ({
      key: document.querySelector("[data-practice]").dataset.at,
      word: document.querySelector("[data-phase]").textContent,
      width: Number(document.querySelector("[data-breath]").style.getPropertyValue("--width")),
      clock: document.querySelector("[data-clock]").textContent,
    }));
    found.push({ at: before + passed, ...seen, changed: seen.key !== last });
    last = seen.key;
  };
  await look();
  return { before, pacer, found, look, pass: async (millis) => {
    await page.clock.runFor(millis);
    passed += millis;
    await look();
  }, now: () => before + passed, until };
}

test("the breath to follow is within 50 ms of its schedule for three minutes", async (t) => {
  const { page } = await breathing(t);
  await page.route("**/practice/seen", (route) => route.fulfill({ status: 204 }));
  const way = await followed(page);
  // The record's own phases, and the sums that have to hold (5 s in, 5 s out, no hold: three minutes).
  assert.deepEqual(way.pacer.phases.map(({ phase, millis }) => [phase, millis]).filter(([, millis]) => millis > 0), [["in", 5000], ["out", 5000]]);
  assert.equal(way.pacer.breath_millis, 10_000);
  assert.equal(way.pacer.whole_millis % way.pacer.breath_millis, 0, "the whole ends on a whole breath");
  const expected = schedule(way.pacer.phases, way.pacer.whole_millis).filter(({ at }) => at > way.before + NEAR && at < THREE_MINUTES - NEAR);
  assert.ok(expected.length >= 34, `${expected.length} changes of breath in three minutes`);
  for (const { at, key } of expected) {
    // Up to 50 ms before, nothing has changed; 50 ms after, it has.
    await way.pass(at - NEAR - way.now());
    const before = way.found.at(-1);
    assert.notEqual(before.key, key, `${key} came more than ${NEAR} ms early`);
    let seen;
    while (way.now() + LOOK <= at + NEAR && seen === undefined) {
      await way.pass(LOOK);
      if (way.found.at(-1).key === key) seen = way.now();
    }
    assert.ok(seen !== undefined, `${key} was not there ${NEAR} ms after its time; instead ${way.found.at(-1).key}`);
  }
  // Each picture in between stands where the schedule puts it: the shape grows and shrinks evenly.
  for (const { at, width, key, clock, word } of way.found) {
    const within = at % 10_000;
    const wide = within < 5000 ? within / 5000 : 1 - (within - 5000) / 5000;
    assert.ok(Math.abs(width - wide) <= NEAR / 5000 + 0.001, `${at} ms (${key}): ${width}, not ${wide.toFixed(3)}`);
    const seconds = Number(clock.split(":")[0]) * 60 + Number(clock.split(":")[1]);
    assert.ok(Math.abs(seconds * 1000 - at) <= 1000 + NEAR, `the clock says ${clock} at ${at} ms`);
    assert.ok(word.trim(), "the breath is said in words too");
  }
  // WCAG 2.2, 1.4.2 Audio Control; and a rule of ours: no sound unless it was chosen.
  assert.deepEqual(await page.evaluate(() => window.heard), { tone: 0, word: 0, vibration: 0 });
});

test("a sound comes at each change of breath only when it was chosen", async (t) => {
  const { page } = await breathing(t, {}, async (she) => {
    await she.press(link("/breathing"));
    assert.equal(await she.page.locator("main input[name=cue]:checked").count(), 0, "all off beforehand");
    await she.tick("cue", "tone");
    await she.press('form[action="/breathing/cues"] > button');
  });
  await page.route("**/practice/seen", (route) => route.fulfill({ status: 204 }));
  await page.clock.runFor(21_000);
  const heard = await page.evaluate(() => window.heard);
  assert.ok(heard.tone >= 3 && heard.tone <= 5, `${heard.tone} tones in 21 s`);
  assert.deepEqual([heard.word, heard.vibration], [0, 0]);
});

// WCAG 2.2, 2.3.3 Animation from Interactions (level AAA, our own aim): with less motion wanted, nothing
// grows or shrinks; the word still says what to do.
test("with reduced motion the shape stands still and the words go on", async (t) => {
  const { page } = await breathing(t, { reducedMotion: "reduce" });
  await page.route("**/practice/seen", (route) => route.fulfill({ status: 204 }));
  const way = await followed(page);
  for (let step = 0; step < 12; step++) await way.pass(1000);
  assert.equal(new Set(way.found.map((own) => own.width)).size, 1, "one width");
  assert.ok(new Set(way.found.map((own) => own.word)).size >= 2, "two words");
  await picture(page, "variant-breathing-reduced-motion");
});
