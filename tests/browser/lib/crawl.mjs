// Which pages there are. Decides how they are found: from one page on, every link of ours that leads to a
// page not seen yet; two addresses that differ by an id or a day alone are one page. Leaves what is looked at
// on each to whoever asked.

const ID = /[0-9A-HJKMNP-TV-Z]{26}|[0-9a-f]{8}-[0-9a-f-]{27}|[0-9a-f]{32}/g;
const DAY = /\d{4}-\d{2}(-\d{2})?/g;

/** The sort of page behind an address. */
export const kind = (path) => path.replace(ID, "ID").replace(DAY, "DAY").replace(/\/\d+$/, "/N");

/** Visits each page once and calls `see(page, kind)`. `most` of a kind, because months go on for ever. */
export async function crawl(page, from, see, { most = 1 } = {}) {
  const queue = [...from];
  const met = new Map();
  const seen = [];
  while (queue.length > 0) {
    const path = queue.shift();
    const own = kind(path);
    if ((met.get(own) ?? 0) >= most) continue;
    met.set(own, (met.get(own) ?? 0) + 1);
    // A link to a file shows no page.
    const answer = await page.goto(new URL(path, page.url()).href).catch((error) => {
      if (!/Download is starting/.test(error.message)) throw error;
    });
    if (!answer) continue;
    await see(page, own, answer);
    seen.push(own);
    const links = await page.evaluate(() =>
      [...document.querySelectorAll("a[href^='/']")].map((own) => new URL(own.href).pathname),
    );
    queue.push(...links.filter((link) => (met.get(kind(link)) ?? 0) < most));
  }
  return seen;
}
