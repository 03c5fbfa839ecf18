// What the program takes of the machine while it runs, and how soon it answers somebody who just comes. All of it is
// for figures and generous bounds: no test here depends on how fast a machine is.

import { readFileSync, readdirSync } from "node:fs";
import { Worker } from "node:worker_threads";

const sorted = (numbers) => [...numbers].sort((one, other) => one - other);
const at = (numbers, share) => sorted(numbers)[Math.min(numbers.length - 1, Math.floor(numbers.length * share))];

/** Looks at a process twice a second: memory in MB, open files. Only Linux says so. */
export function watched(pid) {
  const memory = [], files = [];
  const look = () => {
    try {
      const status = readFileSync(`/proc/${pid}/status`, "utf8");
      memory.push(Number(/^VmRSS:\s+(\d+) kB$/m.exec(status)[1]) / 1024);
      files.push(readdirSync(`/proc/${pid}/fd`).length);
    } catch {
      // It is gone, or this is no Linux; there is nothing to look at.
    }
  };
  look();
  const timer = setInterval(look, 500);
  return {
    look,
    memory,
    files,
    stop: () => clearInterval(timer),
    now: () => (look(), { memory: memory.at(-1), files: files.at(-1) }),
    told: () =>
      memory.length === 0
        ? "not looked at"
        : `memory ${memory[0].toFixed(0)} MB at first, ${Math.max(...memory).toFixed(0)} at most, ${memory.at(-1).toFixed(0)} at last; ` +
          `open files ${files[0]}, ${Math.max(...files)}, ${files.at(-1)}`,
  };
}

/**
 * Somebody who comes four times a second over a new connection and looks at a page. A thread of its own does it, as a
 * browser is a program of its own: what keeps the crowd busy is not counted against the server.
 */
export function passerby(server, path, within) {
  const { origin, cookie } = server;
  const worker = new Worker(new URL("passerby.mjs", import.meta.url), { workerData: { server: { origin, cookie }, path, within } });
  const ended = new Promise((done, failed) => worker.once("message", done).once("error", failed));
  return {
    /** How long each answer took, in milliseconds, and what came where none did. */
    stop: async () => {
      worker.postMessage("enough");
      const { took, failed } = await ended;
      const told =
        `${took.length} times answered, after ${at(took, 0.5)?.toFixed(0)} ms in the middle, ` +
        `${at(took, 0.99)?.toFixed(0)} ms of 99 in a hundred, ${Math.max(...took).toFixed(0)} ms at most; ${failed.length} times not`;
      return { took, failed, told };
    },
  };
}
