// A plan that arrives: by its code, by its file; from the clinic that is known, with its new key, from another
// one, older, altered, signed by nobody. Everything in it is invented.

import assert from "node:assert/strict";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, test } from "node:test";
import { close, visit } from "./lib/browser.mjs";
import { decoded, firstUse } from "./lib/desk.mjs";
import { looking } from "./lib/look.mjs";
import { person } from "./lib/person.mjs";
import { PASSPHRASE, folder, programme, serve, serveDesk } from "./lib/server.mjs";
import { send } from "./lib/ways.mjs";

after(close);

const textOf = (page) => page.locator("main").innerText();
const pathOf = (page) => new URL(page.url()).pathname;

test("a plan that arrives is told apart, and nothing is chosen for her", async (t) => {
  const room = folder(t);
  const looks = looking({ prefix: "arrives-" });
  const revision = (number) => {
    const plan = JSON.parse(readFileSync(programme("1-graded-then-positions"), "utf8"));
    const path = join(room, `plan-${number}.json`);
    writeFileSync(path, JSON.stringify({ ...plan, revision: number }, null, 2));
    return path;
  };

  // A clinic's desk: signs a plan, and gives the file, the code's link, the words to say, those of its key.
  const clinic = async () => {
    const desk = await serveDesk(t);
    const { page } = await visit(desk);
    const she = person(page);
    await page.goto(desk.address);
    await firstUse(she, folder(t));
    const sign = async (number, way, name) => {
      await page.goto(`${desk.origin}/hand-over`);
      await she.upload("file", revision(number));
      await she.press('form[action="/hand-over"] button');
      await she.choose("way", way);
      await she.press(send("/hand-over/sign"));
      await looks.look(page, `ready-${name}`);
      const codes = await page.locator("main .card .code").allInnerTexts();
      const link = await decoded(page, ".scan svg");
      const path = join(room, `${name}.json`);
      await (await she.saves('form[action="/hand-over/file"] button')).saveAs(path);
      await page.goto(`${desk.origin}/hand-over/sheet`);
      await looks.look(page, `sheet-${name}`);
      await page.goto(`${desk.origin}/hand-over/ready`);
      await she.press('form[action="/hand-over/done"] button');
      return { key: codes[0], spoken: codes[1], link, path };
    };
    const newKeys = async () => {
      await page.goto(`${desk.origin}/keys/new`);
      await she.type("passphrase", PASSPHRASE);
      await she.press('form[action="/keys/new"] button');
    };
    return { sign, newKeys };
  };
  const known = await clinic();
  const first = await known.sign(1, "sealed", "first");
  await known.newKeys();
  const second = await known.sign(2, "open", "second");
  assert.notEqual(first.key, second.key, "the clinic changed its key");
  const other = await clinic();
  const foreign = await other.sign(3, "open", "foreign");

  const server = await serve(t, ["--empty", "--now", "2026-05-04T19:30:00+01:00"]);
  const { page } = await visit(server);
  const she = person(page);
  await page.goto(server.address);
  const add = async (fill, name) => {
    await page.goto(`${server.origin}/plan/add`);
    if ((await page.locator("main input[type=file]").count()) === 0) {
      // What waits is put away: it is not hers.
      await she.press('form[action="/plan/accept"]:has([name=answer][value=no]) button');
      await page.goto(`${server.origin}/plan/add`);
    }
    await fill();
    await she.press('form[action="/plan/add"] > button');
    await looks.look(page, name);
    assert.equal(await page.locator("main input:checked").count(), 0, "nothing is chosen for her");
    return textOf(page);
  };
  const file = (path) => () => she.upload("file", path);
  const yes = async () => she.press('form[action="/plan/accept"]:has([name=answer][value=yes]) button');
  const knowing = () => page.locator("main input[name=although]").evaluateAll((all) => all.map((one) => one.value));

  // By its code, with words that are not the right ones first.
  await add(async () => {
    await she.type("link", first.link);
    await she.type("words", "able able able able");
  }, "wrong-words");
  assert.equal(await page.locator('[role="alert"] a[href="#words"]').count(), 1, "said at the words");
  await she.type("words", first.spoken.toUpperCase());
  await she.press('form[action="/plan/add"] > button');
  await looks.look(page, "by-code");
  assert.ok((await textOf(page)).includes(first.key), "the words of the key, to compare");
  assert.deepEqual(await knowing(), []);
  await yes();
  assert.match(pathOf(page), /^\/kept\//);

  // The clinic's new key, which the old one signed.
  const follows = await add(file(second.path), "new-key");
  assert.ok(follows.includes(second.key), "the new key is shown");
  assert.deepEqual(await knowing(), []);
  await yes();
  assert.match(pathOf(page), /^\/kept\//);

  // Another clinic: refused until she says that she asked.
  const said = await add(file(foreign.path), "foreign");
  assert.ok(said.includes(foreign.key) && said.includes(second.key), "both keys are shown");
  assert.deepEqual(await knowing(), ["other_key"]);
  await yes();
  assert.equal(await page.locator('[role="alert"] a[href="#although"]').count(), 1, "said at the choice");
  await looks.look(page, "foreign-not-chosen");

  // The older one again, in the key of before.
  await add(file(first.path), "older");
  assert.deepEqual(await knowing(), ["other_key", "older_revision"]);

  // Altered, and signed by nobody.
  const bytes = readFileSync(second.path);
  bytes[bytes.length >> 1] ^= 1;
  const altered = join(room, "altered.json");
  writeFileSync(altered, bytes);
  assert.match(await add(file(altered), "altered"), /signature does not fit/i);
  assert.equal(await page.locator('form[action="/plan/accept"]').count(), 0);
  await add(file(revision(4)), "nobody");
  assert.deepEqual(await knowing(), ["unsigned"]);
  await page.goto(`${server.origin}/plan`);
  assert.ok((await textOf(page)).includes(second.key), "the clinic that is known is still the known one");
  looks.done({ least: 14 });
});
