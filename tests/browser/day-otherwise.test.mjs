// The whole day for other eyes: on a very small phone in the dark without motion, and with text at 200 % in
// the person's own colours. WCAG 2.2, 1.4.10 Reflow and 1.4.4 Resize Text at every look on the way.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { close, picture } from "./lib/browser.mjs";
import { sideways } from "./lib/checks.mjs";
import { wholeDay } from "./lib/day.mjs";

after(close);

const seen = (prefix) => async (page, name) => {
  assert.deepEqual(await sideways(page), [], name);
  await picture(page, `day-${prefix}-${name}`);
};

test("the whole day at 320 px, dark, with reduced motion", (t) =>
  wholeDay(t, {
    language: "en",
    options: { viewport: { width: 320, height: 568 }, colorScheme: "dark", reducedMotion: "reduce" },
    seen: seen("narrow-dark"),
  }));

test("the whole day with text at 200 %, in forced colours", (t) =>
  wholeDay(t, { language: "en", large: true, options: { forcedColors: "active" }, seen: seen("large-forced") }));
