// A programme of the fixtures, written at the desk with the page's own fields and buttons, as the clinician
// would: nothing is posted past the form. Decides which field says what of a programme, and how two
// programmes are compared whose ids the desk drew itself. Leaves what must come of it to the tests.

import assert from "node:assert/strict";

/** Tenths as they are typed: "22", "22.5". */
const tenths = (value) => String(value / 10);
const page = (she, name) => `${new URL(she.page.url()).pathname.split("/").slice(0, 3).join("/")}/${name}`;

/** One field of whatever sort: typed, chosen or ticked. What is to be left alone is `undefined`. */
async function fill(she, fields) {
  for (const [name, value] of Object.entries(fields)) {
    if (value === undefined || value === false) continue;
    const control = she.page.locator(`main [name="${name}"]:not([type=hidden])`).first();
    assert.equal(await control.count(), 1, `there is no field ${name} on ${she.page.url()}`);
    const sort = await control.evaluate((own) => (own.tagName === "SELECT" ? "select" : own.type));
    if (sort === "radio") await she.choose(name, String(value));
    else if (sort === "checkbox") for (const one of [value === true ? "yes" : value].flat()) await she.tick(name, one);
    else if (sort === "select") await she.select(name, String(value));
    else await she.type(name, String(value));
  }
}

/** Presses a button of the page's form; what was typed goes with it. */
export const then = (she, what) => she.press(`main form.form button.press[name=then][value="${what}"]`);

/** Goes to another page of the draft. */
const open = (she, name) => she.page.goto(new URL(page(she, name), she.page.url()).href);

const schedule = (at, own) => ({
  [`${at}.schedule.weekly_least`]: own.weekly_least,
  [`${at}.schedule.weekly_most`]: own.weekly_most,
  [`${at}.schedule.daily_most`]: own.daily_most,
  [`${at}.schedule.rest_days`]: own.rest_days,
});
const minutes = (at, own) => ({ [`${at}.minutes_least`]: own.least, [`${at}.minutes_most`]: own.most });

/** A condition's own numbers; the window of sessions lies flat in the form. */
function condition(at, { criterion, window, ...own }) {
  const flat = { ...own, ...window };
  return Object.fromEntries(Object.entries(flat).map(([name, value]) => [`${at}.${name}`, value]));
}

async function writeRule(she, at, rule, stepIds) {
  await then(she, `add:${at}`);
  const lists = {
    step_up: (rule.step_up?.all_of ?? []).map((own) => ({ when: own })),
    step_back: rule.step_back ?? [],
    pause: (rule.pause ?? []).map((own) => ({ when: own })),
  };
  for (const [list, items] of Object.entries(lists)) {
    for (const [index, { when, target }] of items.entries()) {
      await then(she, `add:${at}.${list}:${when.criterion}`);
      const to = typeof target === "object" ? `step:${stepIds.get(target.step)}` : target;
      await fill(she, { ...condition(`${at}.${list}.${index}`, when), [`${at}.${list}.${index}.target`]: to });
    }
  }
  await fill(she, { [`${at}.after_gap_days`]: rule.after_gap_days });
}

/** Writes the whole programme into the draft that is open. `ownKey`: the desk's own key as a reader. */
export async function write(she, plan, { ownKey = false } = {}) {
  await open(she, "who");
  await fill(she, {
    for_whom: plan.for,
    intended_for: plan.intended_for,
    language: plan.language,
    "clinician.name": plan.clinician.name,
    "clinician.clinic": plan.clinician.clinic,
    "contact.name": plan.contact.name,
    "contact.phone": plan.contact.phone,
    "contact.hours": plan.contact.hours,
    "contact.if_nobody_answers": plan.contact.if_nobody_answers,
    "out_of_hours.what_to_do": plan.out_of_hours.what_to_do,
    "out_of_hours.phone": plan.out_of_hours.phone,
    "emergency.number": plan.emergency.number,
    "emergency.country": plan.emergency.country,
    review_by: plan.review_by,
  });
  await then(she, "save");

  const steps = plan.steps ?? [];
  // Which id the desk drew for which step of the fixture.
  const stepIds = new Map();
  if (steps.length > 0) {
    for (const _ of steps) {
      await open(she, "steps");
      await then(she, "add:steps");
    }
    for (const [index, step] of steps.entries()) {
      const at = `steps.${index}`;
      await open(she, `steps/${index}`);
      for (const _ of step.parts) await then(she, `add:${at}.parts`);
      for (const [part, own] of step.parts.entries()) {
        await fill(she, {
          [`${at}.parts.${part}.label`]: own.trainer?.label,
          [`${at}.parts.${part}.size_mm`]: own.trainer && tenths(own.trainer.widest_diameter_tenths_mm),
          ...minutes(`${at}.parts.${part}`, own.minutes),
        });
      }
      await fill(she, {
        [`${at}.name`]: step.name,
        [`${at}.practice`]: step.practice ?? "trainer",
        [`${at}.position`]: step.position,
        ...schedule(at, step.schedule),
        [`${at}.instruction`]: step.instruction,
        [`${at}.gate`]: step.gate,
        [`${at}.maintain`]: step.maintain,
      });
      await then(she, "save");
    }
    await open(she, "steps");
    const offered = await she.page.locator('main [name="start_at"] option').evaluateAll((all) => all.map((own) => own.value).filter(Boolean));
    assert.equal(offered.length, steps.length, "each step can be the first");
    steps.forEach((step, index) => stepIds.set(step.id, offered[index]));
    await fill(she, { start_at: stepIds.get(plan.start_at) });
    await then(she, "save");
    for (const [index, step] of steps.entries()) {
      if (!step.rule) continue;
      await open(she, `steps/${index}`);
      await writeRule(she, `steps.${index}.rule`, step.rule, stepIds);
      await then(she, "save");
    }
  }

  await open(she, "practices");
  for (const [index, own] of (plan.practices ?? []).entries()) {
    const at = `practices.${index}`;
    await then(she, "add:practices");
    await fill(she, {
      [`${at}.practice`]: own.practice,
      [`${at}.name`]: own.name,
      ...minutes(at, own.minutes),
      ...schedule(at, own.schedule),
      [`${at}.instruction`]: own.instruction,
    });
    if (own.breath) {
      await she.unfold(`[id="${at}.breath"]`);
      await fill(she, Object.fromEntries(["in", "hold_in", "out", "hold_out"].map((phase) => [`${at}.breath.${phase}_seconds`, tenths(own.breath[`${phase}_tenths`])])));
    }
  }
  await then(she, "save");

  await open(she, "rule");
  if (plan.rule) await writeRule(she, "rule", plan.rule, stepIds);
  await fill(she, { late_after_hours: plan.late_after_hours });
  await then(she, "save");

  await open(she, "signs");
  for (const [index, own] of (plan.stricter_signs ?? []).entries()) {
    await then(she, "add:stricter_signs");
    await fill(she, { [`stricter_signs.${index}.sign`]: own.sign, [`stricter_signs.${index}.tier`]: own.tier });
  }
  await fill(she, {
    screening_every_days: plan.screening_every_days,
    ratings_asked: plan.ratings_asked,
    spotting_note_only: plan.spotting_note_only,
  });
  await then(she, "save");

  await open(she, "texts");
  for (const list of ["goals", "activities", "own_cautions"]) {
    for (const [index, own] of (plan[list] ?? []).entries()) {
      await then(she, `add:${list}`);
      await fill(she, { [`${list}.${index}`]: own });
    }
  }
  for (const [index, own] of (ownKey ? [] : (plan.recipients ?? [])).entries()) {
    await then(she, "add:recipients");
    await fill(she, { [`recipients.${index}.name`]: own.name, [`recipients.${index}.key`]: own.key });
  }
  if (ownKey) await then(she, "add_own_key");
  await fill(she, {
    activities_every_days: plan.activities_every_days,
    "manner.numbers_folded": plan.manner?.numbers_folded,
    "manner.grounding_first": plan.manner?.grounding_first,
    "manner.contact_on_stop": plan.manner?.contact_on_stop,
  });
  await then(she, "save");
  return stepIds;
}

/** A programme as another program may compare it: without what the desk decides itself (its id, when it was
    issued), with the ids of steps as the fixture has them, and what is empty or false left out. */
export function plain(plan, stepIds = new Map()) {
  const back = new Map([...stepIds].map(([fixture, drawn]) => [drawn, fixture]));
  const same = (value, key) => {
    if (Array.isArray(value)) return value.map((one) => same(one));
    if (value && typeof value === "object") {
      const entries = Object.entries(value)
        .map(([name, own]) => [name, same(own, name)])
        .filter(([, own]) => own !== false && own !== undefined && !(Array.isArray(own) && own.length === 0))
        .filter(([, own]) => !(own && typeof own === "object" && !Array.isArray(own) && Object.keys(own).length === 0));
      return Object.fromEntries(entries.sort(([one], [other]) => (one < other ? -1 : 1)));
    }
    return ["id", "start_at", "step"].includes(key) ? (back.get(value) ?? value) : value;
  };
  const { id, issued_at, revision, signs_seen, ...rest } = plan;
  return same(rest);
}
