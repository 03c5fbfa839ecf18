// Where things stand on the pages: one place for the addresses and names that the tests find controls by.

/** The button that begins a practice. */
export const begin = (what) => `main form[action="/practice/begin"]:has([name=what][value=${what}]) button`;
/** The button for something during a practice. */
export const during = (event) => `main form[action="/practice/during"]:has([name=event][value=${event}]) button`;
/** The button that sends a form. */
export const send = (action) => `main form[action="${action}"] > button:first-of-type`;
/** A link of the page itself. */
export const link = (to) => `main a[href="${to}"]`;

/** Answers every group of the cautions with "no", one by one; there is no "all no". */
export async function answerNoToAll(she) {
  const names = await she.page
    .locator('main input[name^="group-"][value=no]')
    .evaluateAll((all) => all.map((own) => own.name));
  for (const name of names) await she.choose(name, "no");
  return names;
}

/** Answers what is asked after a practice, each with the same number. */
export async function rateAll(she, number) {
  for (const name of ["peak", "before", "after", "worry"]) {
    if ((await she.page.locator(`main input[name="${name}"]`).count()) > 0) await she.choose(name, number);
  }
}
