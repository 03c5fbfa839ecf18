// The thread of somebody who just comes, again and again, until it is told that it is enough.

import { parentPort, workerData } from "node:worker_threads";
import { once } from "./wire.mjs";

const { server, path, within } = workerData;
const took = [], failed = [];
let going = true;
parentPort.once("message", () => (going = false));
while (going) {
  const began = performance.now();
  try {
    const { status } = await once(server, { path, within });
    if (status === 200) took.push(performance.now() - began);
    else failed.push(`${status}`);
  } catch (error) {
    failed.push(error.code ?? error.message);
  }
  await new Promise((done) => setTimeout(done, 250));
}
parentPort.postMessage({ took, failed });
