// Somebody at the page: with a pointer or a finger, or with the keyboard alone. Decides how a control is
// found (by where it leads or what it sends, so that it works in every language), that it has a role and a
// name as a screen reader would say them, and how it is used. Leaves what is done to the tests.

import assert from "node:assert/strict";

const ROLES = { A: "link", BUTTON: "button", SUMMARY: null };

/** A person with a pointer; with `keys` she has the keyboard alone. */
export function person(page, { keys = false } = {}) {
  const act = keys ? byKeys(page) : byPointer(page);

  // WCAG 2.2, 4.1.2 Name, Role, Value: what is pressed has a role and a name, taken from the page.
  async function named(selector) {
    const control = page.locator(selector).first();
    await control.waitFor({ state: "visible" });
    const { tag, name } = await control.evaluate((own) => ({
      tag: own.tagName,
      name: (own.getAttribute("aria-label") ?? own.innerText).replace(/\s+/g, " ").trim(),
    }));
    assert.ok(name, `${selector} has no name`);
    const role = ROLES[tag];
    if (!role) return { control, name };
    const found = page.getByRole(role, { name, exact: true }).and(control);
    assert.equal(await found.count(), 1, `${selector} is no ${role} "${name}" to a screen reader`);
    return { control: found, name };
  }

  async function answered(name, value, kind) {
    const quoted = CSS(value);
    const control = page.locator(`main input[type=${kind}][name="${name}"][value="${quoted}"]`).first();
    const label = await control.evaluate((own) => own.labels[0]?.innerText.trim());
    assert.ok(label, `${name}=${value} has no label`);
    assert.equal(await page.getByRole(kind, { name: label, exact: true }).and(control).count(), 1);
    return control;
  }

  return {
    page,
    keys,
    /** Presses a link or a button and waits for the whole page that comes, its look too. Gives the words that stood on it. */
    async press(selector) {
      const { control, name } = await named(selector);
      const shown = page.waitForEvent("load");
      await act.press(control);
      await shown;
      return name;
    },
    /** Presses something that hands over a file. */
    async saves(selector) {
      const { control } = await named(selector);
      const saved = page.waitForEvent("download");
      await act.press(control);
      return saved;
    },
    /** Opens what is folded. */
    async unfold(selector) {
      const fold = page.locator(selector).first();
      if (await fold.evaluate((own) => own.open)) return;
      await act.press(fold.locator("> summary"));
      assert.ok(await fold.evaluate((own) => own.open), `${selector} does not open`);
    },
    /** Chooses one of several. */
    async choose(name, value) {
      const control = await answered(name, value, "radio");
      await act.choose(control);
      assert.ok(await control.isChecked(), `${name}=${value} was not chosen`);
    },
    /** Ticks a box. */
    async tick(name, value) {
      const control = await answered(name, value, "checkbox");
      await act.tick(control);
      assert.ok(await control.isChecked(), `${name}=${value} was not ticked`);
    },
    /** Chooses one of a list that is folded until it is opened. */
    async select(name, value) {
      const control = page.locator(`main select[name="${name}"]`).first();
      assert.ok(await control.evaluate((own) => own.labels.length > 0), `${name} has no label`);
      await act.select(control, value);
      assert.equal(await control.inputValue(), value, `${name}=${value} was not chosen`);
    },
    /** Types into a field that has a label. */
    async type(name, text) {
      const control = page.locator(`main [name="${name}"]:not([type=hidden])`).first();
      assert.ok(await control.evaluate((own) => own.labels.length > 0), `${name} has no label`);
      await act.type(control, text);
    },
    /** Chooses a file. */
    async upload(name, path) {
      const control = page.locator(`main input[type=file][name="${name}"]`).first();
      const asked = page.waitForEvent("filechooser");
      await act.press(control);
      await (await asked).setFiles(path);
    },
  };
}

function CSS(value) {
  return value.replace(/["\\]/g, "\\$&");
}

function byPointer() {
  return {
    press: (control) => control.click(),
    choose: (control) => control.check(),
    tick: (control) => control.check(),
    select: (control, value) => control.selectOption(value),
    type: (control, text) => control.fill(text),
  };
}

/** More stops than any page of ours has. */
const STOPS = 400;

// WCAG 2.2, 2.1.1 Keyboard, 2.1.2 No Keyboard Trap, 2.4.7 Focus Visible, 2.4.11 Focus Not Obscured: every
// step of the way is looked at.
function byKeys(page) {
  const focused = async (control) => {
    const wanted = await control.elementHandle();
    const here = () => page.evaluate(focusNow, wanted);
    if ((await here()).there) return;
    for (let stop = 0; stop < STOPS; stop++) {
      await page.keyboard.press("Tab");
      const { wrong, there } = await here();
      assert.equal(wrong, "", `keyboard on ${new URL(page.url()).pathname}: ${wrong}`);
      if (there) return;
    }
    assert.fail(`the keyboard does not reach ${control}`);
  };
  return {
    async press(control) {
      await focused(control);
      const kind = await control.evaluate((own) => own.type ?? own.tagName);
      await page.keyboard.press(kind === "SUMMARY" || kind === "submit" ? "Space" : "Enter");
    },
    async choose(control) {
      await focused(control);
      const steps = await control.evaluate((own) => {
        const all = [...document.querySelectorAll(`input[type=radio]`)].filter(
          (one) => one.name === own.name && one.form === own.form,
        );
        return all.indexOf(own) - all.indexOf(document.activeElement);
      });
      if (steps === 0) await page.keyboard.press("Space");
      for (let step = 0; step < Math.abs(steps); step++) {
        await page.keyboard.press(steps > 0 ? "ArrowDown" : "ArrowUp");
      }
    },
    async tick(control) {
      await focused(control);
      if (!(await control.isChecked())) await page.keyboard.press("Space");
    },
    async select(control, value) {
      await focused(control);
      // Home, then down to it: the keys that every browser's list has.
      const steps = await control.evaluate((own, value) => [...own.options].findIndex((one) => one.value === value), value);
      await page.keyboard.press("Home");
      for (let step = 0; step < steps; step++) await page.keyboard.press("ArrowDown");
    },
    async type(control, text) {
      await focused(control);
      const kind = await control.evaluate((own) => own.type);
      // The pieces of a date or a time have keys of their own in each country; a person types them so.
      if (kind === "date" || kind === "time") await control.fill(text);
      else {
        // What stands there is replaced.
        if (await control.inputValue()) await page.keyboard.press("Control+A");
        await page.keyboard.type(text);
      }
    },
  };
}

// Runs in the page: whether the focus is where it is wanted, and what is wrong with how it is seen.
function focusNow(wanted) {
  const own = document.activeElement;
  // A group of radio buttons is one stop: any of it will do, the arrows do the rest.
  const group = wanted.type === "radio" && own?.type === "radio" && own.name === wanted.name && own.form === wanted.form;
  const there = own === wanted || group;
  if (!own || own === document.body) return { there, wrong: "" };
  const what = `${own.tagName.toLowerCase()} "${(own.innerText || own.name || own.id || "").trim().slice(0, 40)}"`;
  const drawn = [own, own.closest("label"), own.closest("fieldset")].filter(Boolean).some((one) => {
    const style = getComputedStyle(one);
    return style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
  });
  if (!drawn) return { there, wrong: `${what} has the focus and does not show it (2.4.7)` };
  const box = own.getBoundingClientRect();
  if (box.width < 1 || box.height < 1) return { there, wrong: `${what} has the focus and no size (2.4.7)` };
  const inside = box.bottom > 0 && box.right > 0 && box.top < innerHeight && box.left < innerWidth;
  if (!inside) return { there, wrong: `${what} has the focus outside the window (2.4.11)` };
  const points = [0.5, 0.1, 0.9].flatMap((x) => [0.5, 0.1, 0.9].map((y) => [box.left + box.width * x, box.top + box.height * y]));
  const uncovered = points.some(([x, y]) => {
    const top = document.elementFromPoint(x, y);
    return top && (own === top || own.contains(top) || top.contains(own) || own.closest("label")?.contains(top));
  });
  return { there, wrong: uncovered ? "" : `${what} has the focus and is covered (2.4.11)` };
}
