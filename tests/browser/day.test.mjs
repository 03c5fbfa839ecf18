// The whole day, in a real browser, in every language there is.

import { after, test } from "node:test";
import { close, picture } from "./lib/browser.mjs";
import { wholeDay } from "./lib/day.mjs";
import { speaks } from "./lib/server.mjs";

after(close);

const day = (language, name, options = {}) =>
  test(name, async (t) => {
    if (!(await speaks(t, language))) return t.skip(`frond does not speak ${language} yet`);
    await wholeDay(t, { language, ...options, seen: (page, name) => picture(page, `day-${language}-${name}`) });
  });

day("en", "the whole day in English");
day("es", "the whole day in Spanish");
