// Every screen that can be reached, in every state of a diary that we know of: the rules of lib/checks, no
// request that leaves this machine, and a picture of each.

import { after, test } from "node:test";
import { close, visit } from "./lib/browser.mjs";
import { crawl, kind } from "./lib/crawl.mjs";
import { looking } from "./lib/look.mjs";
import { serve } from "./lib/server.mjs";

after(close);

const nameOf = (path) => kind(path).replace(/^\//, "").replaceAll("/", "-") || "first-page";

test("every screen of a filled diary", async (t) => {
  const server = await serve(t);
  const { page } = await visit(server);
  await page.goto(server.address);
  const looks = looking();
  await crawl(page, ["/", "/today", "/screening", "/hold-questions", "/ready", "/step-check", "/nothing-here"], async (page, path, answer) => {
    await looks.look(page, nameOf(path), answer);
  });
  looks.done({ least: 45 });
});

test("every screen of an empty diary", async (t) => {
  const server = await serve(t, ["--empty", "--now", "2026-05-04T19:30:00+01:00"]);
  const { page } = await visit(server);
  const answer = await page.goto(server.address);
  const looks = looking({ prefix: "empty-" });
  await looks.look(page, nameOf(new URL(page.url()).pathname), answer);
  await crawl(page, ["/today"], (page, path, answer) => looks.look(page, nameOf(path), answer));
  looks.done({ least: 30 });
});
