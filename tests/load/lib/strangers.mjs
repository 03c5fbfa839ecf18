// Whoever means no good, or whose machine fell asleep: connections that say nothing, that say it a byte a second,
// that break off in the middle, that come by the hundred, that say too much.

import { FORM, bare } from "./wire.mjs";

const sleep = (ms) => new Promise((done) => setTimeout(done, ms));

const head = (server, more = "") => `POST /bring HTTP/1.1\r\nhost: ${new URL(server.origin).host}\r\n${more}`;
const let_in = (server) => `cookie: ${server.cookie}\r\norigin: ${server.origin}\r\n`;

/** Says this a byte a second until it is cut off. */
async function slowly(server, text, going) {
  const { socket, ended } = bare(server);
  let closed = false;
  ended.then(() => (closed = true));
  for (const byte of Buffer.from(text)) {
    if (closed || !going()) break;
    socket.write(Buffer.from([byte]));
    await sleep(1_000);
  }
  if (!going()) socket.destroy();
  await ended;
}

const WAYS = {
  "a head, a byte a second": (server, going) => slowly(server, head(server, `x: ${"y".repeat(4_000)}`), going),
  "a body, a byte a second": async (server, going) => {
    const { socket, ended } = bare(server);
    socket.write(head(server, `${let_in(server)}content-type: ${FORM}\r\ncontent-length: 60000\r\n\r\n`));
    let closed = false;
    ended.then(() => (closed = true));
    while (!closed && going()) {
      socket.write("a");
      await sleep(1_000);
    }
    socket.destroy();
    await ended;
  },
  "nothing at all": async (server, going) => {
    const { socket, ended } = bare(server);
    await Promise.race([ended, (async () => { while (going()) await sleep(200); })()]);
    socket.destroy();
  },
  "half a head, and gone": async (server) => {
    const { socket, ended } = bare(server);
    socket.write(head(server, "content-len"));
    await sleep(50);
    socket.resetAndDestroy();
    await ended;
  },
  "half a body, and gone": async (server) => {
    const { socket, ended } = bare(server);
    socket.write(head(server, `${let_in(server)}content-type: multipart/form-data; boundary=edge\r\ncontent-length: 50000\r\n\r\n--edge\r\n`));
    await sleep(50);
    socket.resetAndDestroy();
    await ended;
  },
  "the end in place of a body": async (server) => {
    const { socket, ended } = bare(server);
    socket.end(head(server, `${let_in(server)}content-type: ${FORM}\r\ncontent-length: 500\r\n\r\n`));
    await Promise.race([ended, sleep(20_000)]);
    socket.destroy();
  },
  "more connections than there are places": async (server, going) => {
    const all = Array.from({ length: 400 }, () => bare(server));
    for (let tenths = 0; tenths < 20 && going(); tenths++) await sleep(100);
    for (const { socket } of all) socket.destroy();
    await sleep(500);
  },
  "a head that is too long": async (server) => {
    const { socket, ended, said } = bare(server);
    socket.write(head(server, `x: ${"y".repeat(300_000)}\r\n\r\n`));
    await Promise.race([ended, sleep(20_000)]);
    socket.destroy();
    return said();
  },
  "too many lines in a head": async (server) => {
    const { socket, ended, said } = bare(server);
    socket.write(head(server, `${"x: y\r\n".repeat(1_000)}\r\n`));
    await Promise.race([ended, sleep(20_000)]);
    socket.destroy();
    return said();
  },
  "no HTTP": async (server) => {
    const { socket, ended } = bare(server);
    socket.write(Buffer.from([0x16, 3, 1, 2, 0, 1, 0, 1, 0xfc, 3, 3, 0xff, 0, 13, 10]));
    await Promise.race([ended, sleep(20_000)]);
    socket.destroy();
  },
};

/** So many of each at a time, over and over until it is stopped. */
const MANY = {
  "a head, a byte a second": 40,
  "a body, a byte a second": 12,
  "nothing at all": 40,
  "half a head, and gone": 4,
  "half a body, and gone": 4,
  "the end in place of a body": 2,
  "more connections than there are places": 1,
  "a head that is too long": 1,
  "too many lines in a head": 1,
  "no HTTP": 1,
};

/** Lets all of them come. */
export function strangers(server) {
  let going = true;
  const came = Object.fromEntries(Object.keys(WAYS).map((name) => [name, 0]));
  const all = [];
  for (const [name, many] of Object.entries(MANY)) {
    for (let one = 0; one < many; one++) {
      all.push(
        (async () => {
          while (going) {
            await WAYS[name](server, () => going);
            came[name]++;
            await sleep(100);
          }
        })(),
      );
    }
  }
  return { came, stop: async () => ((going = false), Promise.all(all)) };
}
