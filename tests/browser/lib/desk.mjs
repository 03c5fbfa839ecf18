// What is done at the clinician's desk, as she does it. Decides which control is meant; leaves what must come
// of it to the tests.

import { join } from "node:path";
import { PASSPHRASE } from "./server.mjs";

/** First use, from the question for a passphrase to the copy that was looked at. Gives the copy's path. */
export async function firstUse(she, room) {
  await she.type("new", PASSPHRASE);
  await she.type("again", PASSPHRASE);
  await she.press('form[action="/first"] button');
  const saved = await she.saves('form[action="/keys/copy/file"] button');
  const copy = join(room, saved.suggestedFilename());
  await saved.saveAs(copy);
  await she.upload("file", copy);
  await she.type("passphrase", PASSPHRASE);
  await she.press('form[action="/keys/copy"] button');
  return copy;
}
