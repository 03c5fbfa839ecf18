// A desk under load, tried from outside: two hundred at once, strangers who mean no good beside them, and the program
// killed in the middle. It is alive throughout, takes no more and no more of the machine, and what it said that it
// kept is there afterwards, and nothing half. How long: FROND_LOAD_SECONDS, 10 unless told. Everything is invented.

import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { PASSPHRASE, folder, serve } from "../browser/lib/server.mjs";
import { passerby, watched } from "./lib/figures.mjs";
import { Told, people } from "./lib/people.mjs";
import { strangers } from "./lib/strangers.mjs";
import { FORM, bare, files, keeping, once } from "./lib/wire.mjs";

const SECONDS = Number(process.env.FROND_LOAD_SECONDS ?? 10);
const AT_ONCE = 200;
/** Somebody who comes in the middle of all that is answered at all within this; how soon, the figures say. */
const ALIVE_WITHIN = 30_000;
/** More memory than this, in MB, is too much: the longest bodies that are taken at once, several times over. */
const MEMORY_MOST = 1_500;
/** The same where bodies of 100 MB come: two of them, each three times over while it is taken apart. */
const LONG_MOST = 800;
/** The places for connections, and what else is open. */
const FILES_MOST = 256 + 100;

const sleep = (ms) => new Promise((done) => setTimeout(done, ms));

/** A desk on this folder, entered with its token. */
async function desk(t, room) {
  const server = await serve(t, ["--folder", room], {}, "desk");
  const { pathname, search } = new URL(server.address);
  const entered = await fetch(server.origin + pathname + search, { redirect: "manual" });
  server.cookie = entered.headers.get("set-cookie").split(";")[0];
  return server;
}

const send = (server, path, fields) =>
  once(server, { path, method: "POST", kind: FORM, body: new URLSearchParams(fields).toString() });

async function begun(t, room) {
  const server = await desk(t, room);
  assert.equal((await send(server, "/first", { new: PASSPHRASE, again: PASSPHRASE })).to, "/keys/copy");
  return server;
}

async function again(t, room) {
  const server = await desk(t, room);
  assert.equal((await send(server, "/open", { passphrase: PASSPHRASE })).to, "/");
  return server;
}

const invented = () => readdirSync(process.env.FROND_LOAD_SUMMARIES).map((name) => join(process.env.FROND_LOAD_SUMMARIES, name));

/** What was told to be kept is there, whole; what was not is not there. */
async function look(server, room, told) {
  const missing = [];
  // Many files may still be read anew beside the pages.
  for (let tries = 0; tries < 300 && /<progress/.test((await once(server, { path: "/bring/now" })).text); tries++) await sleep(100);
  assert.equal((await once(server, { path: "/people" })).status, 200);
  for (const diary of told.diaries) {
    if ((await once(server, { path: `/people/${diary}` })).status !== 200) missing.push(`the summary of ${diary}`);
  }
  for (const diary of told.broken) {
    if ((await once(server, { path: `/people/${diary}` })).status !== 404) missing.push(`${diary}, of which only something broken was sent, is shown`);
  }
  const list = await once(server, { path: "/programmes" });
  for (const [draft, said] of told.drafts) {
    if (!list.text.includes(`/programmes/${draft}/who`)) missing.push(`draft ${draft} in the list`);
    const { status, text } = await once(server, { path: `/programmes/${draft}/who` });
    const value = /name="for_whom"[^>]*value="([^"]*)"/.exec(text)?.[1] ?? /value="([^"]*)"[^>]*name="for_whom"/.exec(text)?.[1] ?? "";
    const may = said === null ? null : "sure" in said ? [said.sure] : said.may;
    if (status !== 200) missing.push(`draft ${draft}: ${status}`);
    else if (may && !may.includes(value)) missing.push(`draft ${draft} says "${value}", not ${may.map((one) => `"${one}"`).join(" or ")}`);
  }
  assert.deepEqual(missing, []);
  // Each file's name is the SHA-256 of its bytes: half a one under such a name would be noticed here by other means.
  const summaries = join(room, "summaries");
  for (const name of existsSync(summaries) ? readdirSync(summaries).filter((name) => name.endsWith(".age")) : []) {
    const hash = createHash("sha256").update(readFileSync(join(summaries, name))).digest("hex");
    assert.equal(`${hash}.age`, name, "a file of the cabinet is whole");
  }
}

test("two hundred at once, and strangers beside them; then it is killed", async (t) => {
  const room = join(folder(t), "desk");
  const server = await begun(t, room);
  const told = new Told(), agent = keeping(AT_ONCE), summaries = invented();
  const figures = watched(server.child.pid);
  const still = figures.now();
  const crowd = people(server, AT_ONCE, summaries, told, agent);
  await sleep(1_000);
  const others = strangers(server);
  const visitor = passerby(server, "/keys", ALIVE_WITHIN);
  await sleep((SECONDS * 1_000) / 2);
  const half = figures.now();
  await sleep((SECONDS * 1_000) / 2);
  const visits = await visitor.stop();
  const whole = figures.now();
  // In the middle of it, with everybody still asking.
  await server.kill();
  figures.stop();
  await Promise.all([crowd.stop(), others.stop()]);
  agent.destroy();
  t.diagnostic(`${SECONDS} s: ${told.told()}`);
  t.diagnostic(`strangers: ${Object.entries(others.came).map(([name, many]) => `${name} ${many}`).join(", ")}`);
  t.diagnostic(`a passer-by: ${visits.told}`);
  t.diagnostic(figures.told());
  assert.deepEqual(told.wrong, []);
  assert.deepEqual(visits.failed, [], "whoever comes is answered");
  assert.ok(visits.took.length > 0);
  assert.ok(told.diaries.size > 0 && told.drafts.size > 0 && told.broken.size > 0, "something was kept, and something refused");
  assert.equal(server.told(), "", "nothing was written to the terminal");
  if (still.memory !== undefined) {
    assert.ok(Math.max(...figures.memory) < MEMORY_MOST, `memory: ${figures.told()}`);
    assert.ok(Math.max(...figures.files) <= FILES_MOST, `open files: ${figures.told()}`);
    t.diagnostic(`memory: ${still.memory.toFixed(0)} MB before, ${half.memory?.toFixed(0)} half way, ${whole.memory?.toFixed(0)} at the end`);
  }
  const next = await again(t, room);
  await look(next, room, told);
  await next.stop();
});

test("killed again and again while it writes, nothing acknowledged is lost", async (t) => {
  const room = join(folder(t), "desk");
  const told = new Told(), summaries = invented();
  let server = await begun(t, room);
  const rounds = SECONDS >= 60 ? 10 : 3;
  for (let round = 0; round < rounds; round++) {
    const agent = keeping(20);
    const crowd = people(server, 20, summaries, told, agent);
    await sleep(800 + Math.random() * 1_200);
    await server.kill();
    await crowd.stop();
    agent.destroy();
    server = await again(t, room);
    await look(server, room, told);
  }
  t.diagnostic(`killed ${rounds} times: ${told.told()}`);
  assert.deepEqual(told.wrong, []);
  assert.ok(told.diaries.size > 0 && told.drafts.size > 0);
  await server.stop();
});

test("who says nothing is cut off, and everything is given back", async (t) => {
  const room = join(folder(t), "desk");
  const server = await begun(t, room);
  const before = watched(server.child.pid);
  const at_first = before.now();
  const slow = Array.from({ length: 100 }, () => bare(server));
  for (const { socket } of slow.slice(0, 50)) socket.write("GET / HTTP/1.1\r\nhost: ");
  const began = performance.now();
  const ended = await Promise.race([Promise.all(slow.map(({ ended }) => ended)), sleep(60_000)]);
  assert.ok(ended, "connections that say nothing are ended by the server");
  t.diagnostic(`cut off after ${((performance.now() - began) / 1_000).toFixed(1)} s`);
  // What is answered keeps nobody from being let go afterwards.
  assert.equal((await once(server, { path: "/keys" })).status, 200);
  await sleep(1_000);
  const now = before.now();
  before.stop();
  if (now.files !== undefined) assert.ok(now.files <= at_first.files + 10, `open files: ${before.told()}`);
});

test("when all places are taken, whoever comes is let in and the one who was left longest gives way", async (t) => {
  const room = join(folder(t), "desk");
  const server = await begun(t, room);
  const idle = Array.from({ length: 600 }, () => bare(server));
  await sleep(500);
  const { status } = await once(server, { path: "/keys", within: ALIVE_WITHIN });
  assert.equal(status, 200);
  const open = watched(server.child.pid);
  open.stop();
  t.diagnostic(open.told());
  if (open.files.length > 0) assert.ok(open.files[0] <= FILES_MOST, `open files: ${open.told()}`);
  for (const { socket } of idle) socket.destroy();
});

// Too slow for every run: the body's time is a minute.
if (SECONDS >= 60) {
  test("a body at a byte a second is cut off, and of many long ones two are in memory at a time", async (t) => {
    const room = join(folder(t), "desk");
    const server = await begun(t, room);
    const slow = bare(server);
    let cut = false;
    const ended = slow.ended.then((said) => ((cut = true), said));
    slow.socket.write(
      `POST /people HTTP/1.1\r\nhost: ${new URL(server.origin).host}\r\ncookie: ${server.cookie}\r\norigin: ${server.origin}\r\n` +
        `content-type: ${FORM}\r\ncontent-length: 60000\r\n\r\n`,
    );
    const began = performance.now();
    const figures = watched(server.child.pid);
    const bytes = Buffer.alloc(100 * 1024 * 1024, "a");
    const answers = await Promise.all(Array.from({ length: 16 }, () => once(server, { path: "/bring", method: "POST", within: 240_000, ...files([["long", bytes]]) })));
    figures.stop();
    t.diagnostic(`sixteen bodies of 100 MB at once: ${figures.told()}`);
    for (const { status } of answers) assert.equal(status, 303);
    if (figures.memory.length > 0) assert.ok(Math.max(...figures.memory) < LONG_MOST, figures.told());
    while (!cut && performance.now() - began < 150_000) {
      slow.socket.write("a");
      await sleep(1_000);
    }
    assert.ok(cut, "it is cut off");
    assert.match(await ended, /^HTTP\/1\.1 408 /);
    t.diagnostic(`a slow body was cut off after ${((performance.now() - began) / 1_000).toFixed(0)} s`);
  });
}
