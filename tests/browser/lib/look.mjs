// One screen looked at: everything it has to keep to, at every size and in every theme that is asked for,
// and its picture. Gathers what is wrong, so that one run tells all of it.

import assert from "node:assert/strict";
import { PHONE, picture, styled } from "./browser.mjs";
import { everything, sideways } from "./checks.mjs";

/** Narrowest that WCAG 2.2, 1.4.10 asks for, in CSS pixels. */
const NARROW = { width: 320, height: 640 };

/** Collects the looks of one test; `done` fails with everything that was wrong. */
export function looking({ lang = "en", prefix = "", only = everything, pictures = () => true } = {}) {
  const wrong = [];
  const seen = new Map();
  return {
    seen,
    async look(page, name, answer) {
      const own = `${prefix}${name}`;
      if (seen.has(own)) return;
      const status = answer?.status?.() ?? 200;
      seen.set(own, status);
      if (status >= 500 && status !== 503) wrong.push(`${own}: answered ${status}`);
      const plain = await styled(page);
      wrong.push(...plain.map((line) => `${own}: ${line}`));
      // Without it every other rule would fail, and say nothing.
      if (plain.length > 0) return;
      wrong.push(...(await only(page, { lang })).map((line) => `${own}: ${line}`));
      wrong.push(...(await narrowAndLarge(page)).map((line) => `${own}: ${line}`));
      if (pictures(name)) await picture(page, own);
    },
    done({ least = 1 } = {}) {
      assert.ok(seen.size >= least, `only ${seen.size} screens were seen, of at least ${least}`);
      assert.equal(wrong.length, 0, `${wrong.length} faults:\n${wrong.join("\n")}`);
    },
    wrong,
  };
}

/** WCAG 2.2, 1.4.10 at 320 px and 1.4.4 with the text at 200 %. */
export async function narrowAndLarge(page) {
  const wrong = [];
  await page.setViewportSize(NARROW);
  wrong.push(...(await sideways(page)));
  await page.setViewportSize(PHONE);
  // The policy forbids style attributes in what was sent, not what a browser's own setting does.
  await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
  wrong.push(...(await sideways(page)).map((line) => `text at 200 %: ${line}`));
  await page.evaluate(() => (document.documentElement.style.fontSize = ""));
  return wrong;
}
