// Who is let in, what is taken, and what is left behind: the server of `frond try` tried from outside, as
// another program or another site could, and from two windows at once.

import assert from "node:assert/strict";
import { request } from "node:http";
import { after, test } from "node:test";
import { close, visit } from "./lib/browser.mjs";
import { person } from "./lib/person.mjs";
import { serve } from "./lib/server.mjs";
import { link } from "./lib/ways.mjs";

after(close);

/** One request, with whatever headers: `fetch` would not send a foreign Host. */
function ask(server, path, { method = "GET", headers = {}, body } = {}) {
  const { hostname, port } = new URL(server.origin);
  return new Promise((done, failed) => {
    // A connection of its own: what still comes of it after the answer concerns no other request.
    const sent = request({ hostname, port, path, method, headers, agent: false }, (answer) => {
      let text = "";
      answer.on("error", failed);
      answer.setEncoding("utf8");
      answer.on("data", (part) => (text += part));
      answer.on("end", () => done({ status: answer.statusCode, headers: answer.headers, text }));
    });
    sent.on("error", failed);
    // The server may close while a long body is still being written; the answer is there by then.
    sent.on("socket", (socket) => socket.on("error", () => {}));
    sent.end(body);
  });
}

/** Enters with the token and gives the cookie. */
async function enter(server) {
  const { pathname, search } = new URL(server.address);
  const answer = await ask(server, pathname + search);
  assert.equal(answer.status, 303);
  assert.doesNotMatch(answer.headers.location, /enter=/, "the token is led away from");
  const cookie = answer.headers["set-cookie"][0];
  // RFC 6265bis: no script reads it, no other site sends it.
  assert.match(cookie, /; HttpOnly/);
  assert.match(cookie, /; SameSite=Strict/);
  return cookie.split(";")[0];
}

const FORM = { "content-type": "application/x-www-form-urlencoded" };

test("without the token, with a used one, from elsewhere: refused", async (t) => {
  const server = await serve(t, ["--empty"]);
  const { pathname, search } = new URL(server.address);
  const nothing = (answer, why) => {
    assert.equal(answer.status, 403, why);
    assert.doesNotMatch(answer.text, /<html/, `${why}: no page`);
    assert.match(answer.headers["cache-control"], /no-store/);
  };
  nothing(await ask(server, "/today"), "no token");
  nothing(await ask(server, "/?enter=" + "0".repeat(64)), "a guessed token");
  // A foreign Host, as after DNS rebinding; it must not use the token up either.
  for (const host of ["example.org", "127.0.0.1", `127.0.0.1:${Number(new URL(server.origin).port) + 1}`, "127.0.0.1.example.org"]) {
    nothing(await ask(server, pathname + search, { headers: { host } }), `Host: ${host}`);
  }
  nothing(await ask(server, pathname + search, { headers: { "sec-fetch-site": "cross-site" } }), "led here by another site");
  const cookie = await enter(server);
  nothing(await ask(server, pathname + search), "the token a second time");
  assert.equal((await ask(server, "/today", { headers: { cookie } })).status, 200);
  nothing(await ask(server, "/today", { headers: { cookie: `${cookie}0` } }), "another cookie");
  nothing(await ask(server, "/today", { headers: { cookie, host: "example.org" } }), "the cookie at a foreign Host");
  // A form of another site: RFC 6454 Origin, Fetch Metadata.
  const body = "text=hello";
  const good = { ...FORM, cookie, origin: server.origin };
  for (const [name, headers] of Object.entries({
    "a foreign Origin": { ...good, origin: "https://example.org" },
    "Origin: null": { ...good, origin: "null" },
    "no Origin": { ...FORM, cookie },
    "another port": { ...good, origin: "http://127.0.0.1:1" },
    "cross-site": { ...good, "sec-fetch-site": "cross-site" },
    "same-site is not same-origin": { ...good, "sec-fetch-site": "same-site" },
  })) {
    nothing(await ask(server, "/questions", { method: "POST", headers, body }), name);
  }
});

test("too long or malformed: refused, and the pages go on", async (t) => {
  const server = await serve(t, ["--empty"]);
  const cookie = await enter(server);
  const good = { ...FORM, cookie, origin: server.origin };
  const post = (body, headers = good) => ask(server, "/questions", { method: "POST", headers, body });
  // Longer than it may be, said before it is sent, said while it is, and not said at all: refused, or cut off
  // while it is still being sent, whichever this side notices first.
  for (const [body, more] of [
    ["text=a", { "content-length": 70_000 }],
    ["text=" + "a".repeat(5_000_000), {}],
    ["text=" + "a".repeat(5_000_000), { "transfer-encoding": "chunked" }],
  ]) {
    const status = await post(body, { ...good, ...more }).then(
      (answer) => answer.status,
      (error) => error.code,
    );
    assert.ok([413, "EPIPE", "ECONNRESET"].includes(status), `a long body: ${status}`);
  }
  for (const body of ["text", "text=%", "text=%zz", "text=%ff", Buffer.from([0x74, 0x3d, 0xff])]) {
    assert.equal((await post(body)).status, 400, String(body));
  }
  assert.equal((await post('{"text":"hello"}', { ...good, "content-type": "application/json" })).status, 400);
  assert.equal((await post("text=hello", { cookie, origin: server.origin })).status, 400, "no kind");
  assert.equal((await post("text=hello&id=nonsense")).status, 400);
  assert.equal((await post("text=hello")).status, 400, "no id");
  assert.equal((await ask(server, "/today", { method: "DELETE", headers: { cookie, origin: server.origin } })).status, 404);
  assert.equal((await ask(server, "/entry/../../etc/passwd", { headers: { cookie } })).status, 404);
  const page = await ask(server, "/today", { headers: { cookie } });
  assert.equal(page.status, 200);
  assert.equal(server.told(), "", "nothing was written to the terminal");
});

test("no answer is kept by a browser, framed, or taken for another kind", async (t) => {
  const server = await serve(t);
  const cookie = await enter(server);
  for (const path of ["/today", "/entries", "/summary", "/nothing-here", "/look.css", "/practice.js", "/icon.svg", "/call"]) {
    const { headers } = await ask(server, path, { headers: { cookie } });
    // RFC 9111, 5.2.2.5.
    assert.equal(headers["cache-control"], "no-store", path);
    assert.equal(headers["x-content-type-options"], "nosniff", path);
    // Content-Security-Policy Level 3.
    const policy = Object.fromEntries(headers["content-security-policy"].split(";").map((own) => own.trim().split(/ (.*)/s)));
    assert.equal(policy["default-src"], "'none'", path);
    assert.equal(policy["frame-ancestors"], "'none'", path);
    assert.equal(policy["form-action"], "'self'", path);
    assert.equal(policy["base-uri"], "'none'", path);
    for (const value of Object.values(policy)) assert.doesNotMatch(value, /unsafe|\*|https?:|data:/, path);
  }
});

// How many entries say this, in the list of what was written.
async function written(page, server, text) {
  await page.goto(`${server.origin}/questions`);
  return page.locator("main .card", { hasText: text }).count();
}

test("two windows: the same form writes once, two forms write twice, nothing is lost", async (t) => {
  const server = await serve(t, ["--empty"]);
  const { context, page } = await visit(server);
  await page.goto(server.address);
  const other = await context.newPage();
  const send = (own) => person(own).press('main form[action="/questions"] > button');
  // The same form, sent from two windows at once.
  await page.goto(`${server.origin}/questions`);
  const fields = await page.locator('main form[action="/questions"]').evaluate((form) => [...new FormData(form)]);
  const id = fields.find(([name]) => name === "id")[1];
  await other.goto(`${server.origin}/questions`);
  await other.locator('main form[action="/questions"] [name=id]').evaluate((own, id) => (own.value = id), id);
  for (const own of [page, other]) await own.locator("main [name=text]").fill("Invented: the same twice");
  await Promise.all([send(page), send(other)]);
  assert.equal(new URL(page.url()).pathname, new URL(other.url()).pathname, "both lead to the same entry");
  assert.equal(await written(page, server, "Invented: the same twice"), 1);
  // Two forms.
  await page.goto(`${server.origin}/questions`);
  await other.goto(`${server.origin}/questions`);
  await page.locator("main [name=text]").fill("Invented: from one window");
  await other.locator("main [name=text]").fill("Invented: from the other");
  await Promise.all([send(page), send(other)]);
  assert.equal(await written(page, server, "Invented: from one window"), 1);
  assert.equal(await written(page, server, "Invented: from the other"), 1);
  // Sent again with the browser's own going back.
  await page.goto(`${server.origin}/questions`);
  await page.locator("main [name=text]").fill("Invented: sent and sent again");
  await send(page);
  const first = page.url();
  await page.reload();
  assert.equal(page.url(), first);
  assert.equal(await written(page, server, "Invented: sent and sent again"), 1);
});

test("after everything is erased, going back shows nothing of the diary", async (t) => {
  const server = await serve(t);
  const { page } = await visit(server);
  const she = person(page);
  await page.goto(server.address);
  const shown = [];
  for (const path of ["/today", "/entries", "/summary", "/plan"]) {
    await page.goto(server.origin + path);
    shown.push(await page.locator("main").innerText());
  }
  assert.ok(shown.every((text) => text.length > 200));
  await page.goto(`${server.origin}/settings`);
  await she.press(link("/erase/all"));
  await she.press('main form[action="/erase/all"] button');
  const erased = await page.locator("main").innerText();
  for (let back = 0; back < 7; back++) {
    await page.goBack();
    if (page.url() === "about:blank") break;
    assert.equal(await page.locator("main").innerText(), erased, `${back + 1} back`);
  }
});

test("a file that is too long is answered with words, not with a broken page", async (t) => {
  const server = await serve(t, ["--empty"]);
  const { page } = await visit(server);
  await page.goto(server.address);
  await page.goto(`${server.origin}/plan/add`);
  const long = { name: "plan.json", mimeType: "application/json", buffer: Buffer.alloc(3_000_000, " ") };
  await page.locator("main input[type=file]").setInputFiles(long);
  const answered = page.waitForEvent("domcontentloaded");
  await page.locator('main form[action="/plan/add"] > button').click();
  await answered;
  assert.match(page.url(), /\/plan\/add$/);
  assert.ok((await page.locator("body").innerText()).trim().length > 20);
});
