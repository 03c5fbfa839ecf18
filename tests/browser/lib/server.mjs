// A `frond try` or a `frond desk` of its own for each test. Decides how one is started, what its address is, and how it is
// stopped or killed. Leaves what is looked at to the tests.

import { spawn, execFileSync } from "node:child_process";
import { chmodSync, existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

/** The project's own folder. */
export const PROJECT = resolve(dirname(fileURLToPath(import.meta.url)), "../../..");
const TARGET = resolve(PROJECT, process.env.CARGO_TARGET_DIR ?? "target");
/** The program under test. */
export const FROND = process.env.FROND ?? join(TARGET, "debug/frond");
/** Where pictures go. They are never kept with the sources. */
export const PICTURES = join(TARGET, "pictures");
/** A programme of the fixtures. */
export const programme = (name) => join(PROJECT, "fixtures/programmes", `${name}.json`);

/** Invented, and long enough. */
export const PASSPHRASE = "five invented words stand here";
const STARTS_WITHIN = 90_000;

/** A folder that is gone when the test is. */
export function folder(t) {
  const made = mkdtempSync(join(tmpdir(), "frond-browser-"));
  t.after(() => rmSync(made, { recursive: true, force: true }));
  return made;
}

/** A diary of one's own, as a folder and the file with its passphrase. */
export function ownDiary(t) {
  const room = folder(t);
  const secret = join(room, "secret");
  writeFileSync(secret, `${PASSPHRASE}\n`);
  chmodSync(secret, 0o600);
  return { folder: join(room, "diary"), secret, args: ["--diary", join(room, "diary"), "--passphrase-file", secret] };
}

/** Runs the program to its end and gives what it printed. */
export function frond(args, options = {}) {
  return execFileSync(FROND, args, { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"], ...options });
}

/** A desk of one's own, in a folder that is gone when the test is. */
export function serveDesk(t, args = [], env = {}) {
  return serve(t, ["--folder", join(folder(t), "desk"), ...args], env, "desk");
}

/** Starts a server and waits for its address. It is stopped when the test ends. */
export async function serve(t, args = [], env = {}, command = "try") {
  if (!existsSync(FROND)) throw new Error("frond is not built: cargo build --locked -p frond");
  const child = spawn(FROND, [command, "--no-open", ...args], {
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, TZ: "Europe/London", ...env },
  });
  let told = "";
  child.stderr.on("data", (data) => (told += data));
  const gone = new Promise((done) => child.once("exit", (code, signal) => done({ code, signal })));
  const server = {
    child,
    gone,
    /** What has to be closed before it: a browser that still asks would find nobody. */
    guests: [],
    /** What it wrote to standard error so far. */
    told: () => told,
    /** Ends it at once, as a power cut would. */
    kill: async () => (child.kill("SIGKILL"), gone),
    /** Asks it to end. */
    stop: async () => (child.kill("SIGTERM"), gone),
  };
  t.after(async () => {
    try {
      for (const leave of server.guests) await leave();
    } finally {
      await server.stop();
    }
  });
  const lines = createInterface({ input: child.stdout });
  const line = await new Promise((done, failed) => {
    const late = setTimeout(() => failed(new Error(`no address came: ${told}`)), STARTS_WITHIN);
    lines.once("line", (line) => (clearTimeout(late), done(line)));
    gone.then(({ code }) => (clearTimeout(late), failed(new Error(`frond ${command} ended with ${code}: ${told}`))));
  });
  server.address = line.trim();
  server.origin = new URL(server.address).origin;
  return server;
}

/** Whether the program has this language: the first page says which one it is in. */
export async function speaks(t, language) {
  const server = await serve(t, ["--empty", "--language", language]);
  const entered = await fetch(server.address, { redirect: "manual" });
  const cookie = entered.headers.get("set-cookie").split(";")[0];
  const page = await (await fetch(`${server.origin}/today`, { headers: { cookie } })).text();
  await server.stop();
  return new RegExp(`<html lang="${language}"`).test(page);
}
