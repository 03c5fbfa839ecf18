// Requests as a browser that was let in sends them, and bytes as anybody can.

import { Agent, request } from "node:http";
import { connect } from "node:net";

export const FORM = "application/x-www-form-urlencoded";

/** One request; over a connection of its own unless an agent keeps some. */
export function once(server, { path, method = "GET", kind, body, within = 60_000, agent = false, headers = {} }) {
  const { hostname, port } = new URL(server.origin);
  const own = { cookie: server.cookie, ...(method === "GET" ? {} : { origin: server.origin }), ...(kind ? { "content-type": kind } : {}) };
  return new Promise((done, failed) => {
    const sent = request({ hostname, port, path, method, agent, headers: { ...own, ...headers } }, (answer) => {
      const parts = [];
      answer.on("error", failed);
      answer.on("aborted", () => failed(Object.assign(new Error("half an answer"), { code: "HALF" })));
      answer.on("data", (part) => parts.push(part));
      answer.on("end", () => done({ status: answer.statusCode, to: answer.headers.location ?? "", text: Buffer.concat(parts).toString() }));
    });
    const late = setTimeout(() => sent.destroy(Object.assign(new Error("no answer"), { code: "LATE" })), within);
    sent.on("close", () => clearTimeout(late));
    sent.on("error", failed);
    sent.end(body);
  });
}

/** Connections that are kept from one request to the next, as browsers do. */
export const keeping = (most) => new Agent({ keepAlive: true, maxSockets: most });

/** A form that carries files. */
export function files(named, fields = {}) {
  const parts = [];
  for (const [name, bytes] of named) {
    parts.push(`--edge\r\ncontent-disposition: form-data; name="files"; filename="${name}"\r\n\r\n`, bytes, "\r\n");
  }
  for (const [name, value] of Object.entries(fields)) {
    parts.push(`--edge\r\ncontent-disposition: form-data; name="${name}"\r\n\r\n${value}\r\n`);
  }
  parts.push("--edge--\r\n");
  return { kind: "multipart/form-data; boundary=edge", body: Buffer.concat(parts.map((part) => Buffer.from(part))) };
}

/** A bare connection. `ended` comes when it is closed, whoever closes it, with what was said on it till then. */
export function bare(server) {
  const { hostname, port } = new URL(server.origin);
  const socket = connect({ host: hostname, port: Number(port), allowHalfOpen: true });
  let said = "", let_go = () => {};
  socket.on("data", (part) => (said += part));
  // Whoever is cut off is told so here or by `close`.
  socket.on("error", () => {});
  socket.on("end", () => socket.end());
  const ended = new Promise((done) => (let_go = done));
  socket.on("close", () => let_go(said));
  return { socket, ended, said: () => said };
}
