// The whole day once more: from right to left, and with the keyboard alone. A file of its own, so that two
// days can be lived at once.

import { after, test } from "node:test";
import { close, picture } from "./lib/browser.mjs";
import { wholeDay } from "./lib/day.mjs";
import { speaks } from "./lib/server.mjs";

after(close);

test("the whole day mirrored", async (t) => {
  if (!(await speaks(t, "ar-XB"))) return t.skip("frond has no mirrored language yet");
  await wholeDay(t, { language: "ar-XB", seen: (page, name) => picture(page, `day-mirrored-${name}`) });
});

// WCAG 2.2, 2.1.1 Keyboard, 2.1.2 No Keyboard Trap, 2.4.3 Focus Order, 2.4.7 Focus Visible, 2.4.11 Focus Not
// Obscured (Minimum): every stop on the way is looked at.
test("the whole day with the keyboard alone", (t) => wholeDay(t, { language: "en", keys: true }));
