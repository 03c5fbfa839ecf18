// Every screen again, as other people see it: in Spanish, mirrored, with longer words; and the chief ones in
// the dark, with forced colours, narrow, and with large text. A picture of each chief one.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { close, PHONE, picture, visit } from "./lib/browser.mjs";
import { axe, sideways, structure } from "./lib/checks.mjs";
import { crawl, kind } from "./lib/crawl.mjs";
import { looking } from "./lib/look.mjs";
import { serve, speaks } from "./lib/server.mjs";

after(close);

/** The screens that are looked at by eye in every variant. */
const CHIEF = ["/today", "/signs", "/call", "/breathing", "/log/as-planned", "/suggestion", "/steps", "/calendar", "/reminders", "/screening", "/erase/all"];
const nameOf = (path) => kind(path).replace(/^\//, "").replaceAll("/", "-") || "first-page";

const pictures = (name) => CHIEF.some((path) => nameOf(path) === name);

// What another language can break: the direction, the width, an untranslated page; not the colours.
const words = async (page, { lang }) => [...(await structure(page, { lang })), ...(await axe(page, ["html-has-lang", "html-lang-valid", "label", "button-name", "link-name", "document-title", "target-size"]))];

for (const language of ["es", "ar-XB", "en-XA"]) {
  test(`every screen in ${language}`, async (t) => {
    if (!(await speaks(t, language))) return t.skip(`frond does not speak ${language} yet`);
    const server = await serve(t, ["--language", language]);
    const { page } = await visit(server);
    await page.goto(server.address);
    // The invented diary says its own language; the person chooses another in the settings.
    await page.goto(`${server.origin}/settings`);
    const choice = page.locator(`main input[name=language][value="${language}"]`);
    if ((await choice.count()) > 0 && !(await choice.isChecked())) {
      await choice.check();
      const shown = page.waitForEvent("domcontentloaded");
      await page.locator('main form[action="/settings/language"] > button').click();
      await shown;
    }
    const looks = looking({ lang: language, prefix: `${language}-`, only: words, pictures });
    await crawl(page, ["/today", "/screening", "/hold-questions", "/ready"], (page, path, answer) => looks.look(page, nameOf(path), answer));
    looks.done({ least: 40 });
  });
}

// WCAG 2.2, 1.4.11 Non-text Contrast and 1.4.1 Use of Color where the person's own colours take over: what is
// pressed or chosen keeps an edge, because backgrounds are gone.
test("forced colours keep every edge", async (t) => {
  const server = await serve(t);
  const { page } = await visit(server, { forcedColors: "active" });
  await page.goto(server.address);
  const wrong = [];
  for (const path of CHIEF) {
    await page.goto(server.origin + path);
    const edgeless = await page.evaluate(() =>
      [...document.querySelectorAll(".press.next,.press.equal,.choice,.step,.notice,main input[type=text],textarea")]
        .filter((own) => own.checkVisibility())
        .filter((own) => {
          const style = getComputedStyle(own);
          return style.borderTopStyle === "none" || parseFloat(style.borderTopWidth) < 1;
        })
        .map((own) => `${own.className} "${own.innerText?.slice(0, 30)}"`),
    );
    wrong.push(...edgeless.map((own) => `${path}: ${own}`));
    await picture(page, `variant-forced-colours-${nameOf(path)}`);
  }
  assert.deepEqual(wrong, []);
});

test("dark, narrow and large", async (t) => {
  const server = await serve(t);
  const { page } = await visit(server);
  await page.goto(server.address);
  const wrong = [];
  for (const path of CHIEF) {
    await page.emulateMedia({ colorScheme: "dark" });
    await page.goto(server.origin + path);
    // The page itself is dark, and says so to the browser.
    const shade = await page.evaluate(() => getComputedStyle(document.body).backgroundColor.match(/\d+/g).slice(0, 3).reduce((sum, own) => sum + Number(own), 0) / 3);
    if (shade > 64) wrong.push(`${path} is not dark: ${shade}`);
    await picture(page, `variant-dark-${nameOf(path)}`);
    await page.emulateMedia({ colorScheme: "light" });
    await page.setViewportSize({ width: 320, height: 640 });
    wrong.push(...(await sideways(page)).map((line) => `${path}: ${line}`));
    await picture(page, `variant-narrow-${nameOf(path)}`);
    await page.setViewportSize(PHONE);
    await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
    wrong.push(...(await sideways(page)).map((line) => `${path}, text at 200 %: ${line}`));
    await picture(page, `variant-large-${nameOf(path)}`);
  }
  assert.deepEqual(wrong, []);
});
