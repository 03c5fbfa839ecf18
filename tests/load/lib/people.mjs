// Whoever works at the desk, many at once: pages looked at, drafts begun and saved, summaries brought in, and things
// that are wrong. Decides what is asked for and what counts as acknowledged; what must be there afterwards is looked
// at by the test.

import { readFileSync } from "node:fs";
import { FORM, files, once } from "./wire.mjs";

const pick = (from) => from[Math.floor(Math.random() * from.length)];
const PAGES = ["/", "/programmes", "/people", "/keys", "/bring", "/bring/now", "/hand-over", "/rules", "/look.css", "/icon.svg"];

/** What the desk said that it kept, and what it said that it would not. */
export class Told {
  /** Diaries whose summary was brought in. */
  diaries = new Set();
  /** Drafts that were begun, each with what was last saved in it for certain; null: nothing yet. */
  drafts = new Map();
  /** Diaries of which only something broken was sent. */
  broken = new Set();
  answers = new Map();
  cut = new Map();
  wrong = [];

  count(map, key) {
    map.set(key, (map.get(key) ?? 0) + 1);
  }

  told() {
    const said = (map) => [...map].sort().map(([key, many]) => `${key}: ${many}`).join(", ") || "none";
    return `answers ${said(this.answers)}; broken off ${said(this.cut)}; kept ${this.diaries.size} summaries, ${this.drafts.size} drafts`;
  }
}

/** So many people at once until they are stopped. `summaries` is used up from its end. */
export function people(server, many, summaries, told, agent) {
  let going = true;
  const ask = async (what, fits) => {
    try {
      const answer = await once(server, { agent, ...what });
      told.count(told.answers, answer.status);
      if (!fits.includes(answer.status)) told.wrong.push(`${what.method ?? "GET"} ${what.path}: ${answer.status}, not ${fits.join(" or ")}`);
      return answer;
    } catch (error) {
      told.count(told.cut, error.code ?? error.message);
      return null;
    }
  };
  const form = (path, fields, fits) => ask({ path, method: "POST", kind: FORM, body: new URLSearchParams(fields).toString() }, fits);
  const acts = {
    look: () => ask({ path: pick(PAGES) }, [200, 303]),
    bring: async () => {
      const path = summaries.pop();
      if (!path) return;
      const bytes = readFileSync(path);
      const { diary } = JSON.parse(bytes).summary;
      const answer = await ask({ path: "/bring", method: "POST", ...files([["invented.json", bytes]]) }, [303]);
      if (answer?.to === "/bring/now") told.diaries.add(diary);
    },
    broken: async () => {
      const path = summaries.pop();
      if (!path) return;
      const bytes = readFileSync(path);
      const { diary } = JSON.parse(bytes).summary;
      const half = Math.random() < 0.5 ? bytes.subarray(0, bytes.length >> 1) : Buffer.from(bytes).fill(0x37, 500, 540);
      told.broken.add(diary);
      await ask({ path: "/bring", method: "POST", ...files([["invented.json", half]]) }, [303]);
    },
    begin: async () => {
      const answer = await form("/programmes/new", {}, [303]);
      const draft = /^\/programmes\/([0-9a-f]{32})\/who$/.exec(answer?.to ?? "")?.[1];
      if (draft) told.drafts.set(draft, null);
      if (draft) await acts.save(draft);
    },
    save: async (draft = pick([...told.drafts.keys()])) => {
      if (!draft || told.drafts.get(draft)?.busy) return;
      const before = told.drafts.get(draft);
      // Until this is answered either of the two may stand there.
      const name = `Invented ${Math.random().toString(36).slice(2)}`;
      const may = [...(before?.may ?? [before?.sure ?? ""]), name];
      told.drafts.set(draft, { busy: true, may });
      const page = await ask({ path: `/programmes/${draft}/who` }, [200]);
      const shape = /name="shape" value="(\d+)"/.exec(page?.text ?? "")?.[1];
      const answer = shape && (await form(`/programmes/${draft}/who`, { shape, for_whom: name, then: "save" }, [303]));
      if (answer) told.drafts.set(draft, { sure: name });
      else if (!shape) told.drafts.set(draft, before);
      else told.drafts.set(draft, { may });
    },
    person: async () => {
      const diary = pick([...told.diaries]);
      if (diary) await ask({ path: `/people/${diary}` }, [200]);
    },
    noForm: () => ask({ path: "/people", method: "POST", kind: "application/json", body: "{}" }, [400]),
    noEscape: () => ask({ path: "/people", method: "POST", kind: FORM, body: "looked_for=%zz" }, [400]),
    nowhere: () => ask({ path: `/people/${"0".repeat(32)}` }, [404]),
    stranger: () => ask({ path: "/", headers: { host: "example.org" } }, [403]),
    tooLong: () => ask({ path: "/bring", method: "POST", kind: "multipart/form-data; boundary=edge", headers: { "content-length": 300_000_000 }, within: 20_000 }, [413]),
    tooLongUnsaid: async () => {
      const headers = { "transfer-encoding": "chunked" };
      // Refused, or cut off while it is still being sent, whichever this side notices first.
      await ask({ path: "/people", method: "POST", kind: FORM, body: `looked_for=${"a".repeat(2_000_000)}`, headers }, [413]);
    },
  };
  const often = [...Array(12).fill("look"), ...Array(4).fill("bring"), "broken", ...Array(3).fill("begin"), ...Array(4).fill("save"), ...Array(5).fill("person"), "noForm", "noEscape", "nowhere", "stranger", "tooLong", "tooLongUnsaid"];
  const all = Array.from({ length: many }, async () => {
    while (going) await acts[pick(often)]();
  });
  return { stop: async () => ((going = false), Promise.all(all)) };
}
