// What every page has to keep to. Decides how each rule is measured, with its standard beside it; gives what
// is wrong as lines, so that one bad page hides no other. Leaves which pages there are to the tests.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** WCAG 2.0, 2.1 and 2.2, levels A and AA, as axe-core 4.14 names them. */
const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** Words that must stand in no title, address, file name or reminder: somebody else may see those. */
export const HEALTH_WORDS = [
  "pain", "pelvi", "vagin", "trainer", "dilat", "genit", "vulv", "sex", "bleed", "symptom", "therap", "physio",
  "clinic", "health", "medic", "patient", "exercise", "penetrat", "intercourse", "bowel", "bladder", "urin",
  "dolor", "salud", "clínic", "clinic", "médic", "sangr", "síntom", "terap", "fisio", "ejercicio", "paciente",
];

/** The health words of a text. */
export function healthWords(text) {
  const lower = decodeURIComponent(text).toLowerCase();
  return HEALTH_WORDS.filter((word) => lower.includes(word));
}

/** axe-core on the page as it is. The browser's debugger puts it there: the page's own policy would not. */
export async function axe(page, rules) {
  if (!(await page.evaluate(() => Boolean(window.axe)))) await page.evaluate(AXE);
  const found = await page.evaluate(
    ({ TAGS, rules }) =>
      window.axe.run(document, {
        runOnly: rules ? { type: "rule", values: rules } : { type: "tag", values: TAGS },
        resultTypes: ["violations"],
      }),
    { TAGS, rules },
  );
  return found.violations.flatMap((one) => one.nodes.map((node) => `axe ${one.id}: ${node.target.join(" ")}: ${node.failureSummary?.split("\n")[1]?.trim() ?? one.help}`));
}

/** WCAG 2.2, 1.4.10 Reflow (320 CSS pixels) and 1.4.4 Resize Text: nothing scrolls sideways. */
export async function sideways(page) {
  return page.evaluate(() => {
    const own = document.scrollingElement;
    if (own.scrollWidth <= own.clientWidth) return [];
    const wide = [...document.body.querySelectorAll("*")].filter((one) => {
      const box = one.getBoundingClientRect();
      return box.width > 0 && (box.right > own.clientWidth + 0.5 || box.left < -0.5) && getComputedStyle(one).position !== "absolute";
    });
    const name = (one) => `${one.tagName.toLowerCase()}.${one.className} "${one.innerText?.trim().slice(0, 30)}"`;
    return [`scrolls sideways at ${own.clientWidth} px: ${own.scrollWidth} px; ${wide.slice(-2).map(name).join(", ")}`];
  });
}

/** Structure of one page. */
export async function structure(page, { lang }) {
  const wrong = [];
  const seen = await page.evaluate(() => ({
    heads: document.querySelectorAll("h1").length,
    lang: document.documentElement.lang,
    dir: document.documentElement.dir,
    title: document.title,
    levels: [...document.querySelectorAll("h1,h2,h3,h4,h5,h6")].map((own) => Number(own.tagName[1])),
    breaches: window.breaches ?? [],
    styled: document.querySelectorAll("[style]:not([data-breath]),style").length,
    doubled: [...document.querySelectorAll("[id]")].map((own) => own.id).filter((id, at, all) => all.indexOf(id) !== at),
    told: [...document.querySelectorAll("main,input,textarea,[contenteditable]")]
      .filter((own) => own.spellcheck || own.translate)
      .map((own) => own.name || own.localName),
    kept: [...document.forms].filter((own) => own.autocomplete !== "off").map((own) => own.action),
    unstable: [...document.querySelectorAll("a[href^='#']")].map((own) => own.hash.slice(1)).filter((id) => !document.getElementById(id)),
  }));
  // WCAG 2.2, 2.4.6 Headings and Labels, 1.3.1: our own rule is one h1 and no level left out.
  if (seen.heads !== 1) wrong.push(`${seen.heads} headings of the first level`);
  seen.levels.forEach((level, at) => {
    if (at > 0 && level > seen.levels[at - 1] + 1) wrong.push(`a heading jumps from ${seen.levels[at - 1]} to ${level}`);
  });
  // WCAG 2.2, 3.1.1 Language of Page; the direction is HTML's own attribute.
  if (seen.lang !== lang) wrong.push(`lang is "${seen.lang}", not "${lang}"`);
  const rtl = /^(ar|he|fa|ur)/.test(lang);
  if (seen.dir !== (rtl ? "rtl" : "ltr")) wrong.push(`dir is "${seen.dir}"`);
  // WCAG 2.2, 2.4.2 Page Titled; and nobody who sees the list of windows learns what it is about.
  if (!seen.title.trim()) wrong.push("no title");
  const said = healthWords(`${seen.title} ${page.url()}`);
  if (said.length > 0) wrong.push(`title or address says ${said.join(", ")}: ${seen.title} ${page.url()}`);
  // HTML, 6.8.5 Spelling and grammar checking, 3.2.6 translate: a browser may ask another machine about what is written.
  seen.told.forEach((own) => wrong.push(`${own} may be sent away to be spelt or translated`));
  // HTML, 4.10.18.7 Autofill: what was typed is not kept for another time, nor for a window that is opened again.
  seen.kept.forEach((own) => wrong.push(`what is typed into the form to ${own} may be kept`));
  // Content-Security-Policy Level 3, as the browser itself reports it.
  seen.breaches.forEach((breach) => wrong.push(`breach of the policy: ${breach}`));
  if (seen.styled > 0) wrong.push(`${seen.styled} styles in the page itself`);
  // WCAG 2.2, 4.1.2 (ids that are used must be unique).
  seen.doubled.forEach((id) => wrong.push(`two elements with the id ${id}`));
  seen.unstable.forEach((id) => wrong.push(`a link to #${id}, which is not there`));
  return wrong;
}

/** Our own aim for what is pressed, in CSS pixels; WCAG asks for 24. */
const AIM = 44;

/** WCAG 2.2, 2.5.8 Target Size (Minimum): 24 by 24 CSS pixels; links inside a sentence are excepted there. */
export async function targets(page) {
  return page.evaluate((AIM) => {
    const wrong = [];
    const all = document.querySelectorAll("a[href],button,summary,input:not([type=hidden]),textarea,select");
    for (const own of all) {
      // What is pressed to choose an answer is its whole label.
      const label = /radio|checkbox/.test(own.type ?? "") ? own.closest("label") : null;
      const pressed = label ?? own;
      if (!pressed.checkVisibility()) continue;
      // One that nobody sees or reaches is no target; it says what Enter in a field does.
      if (own.matches('.skip, [aria-hidden="true"]')) continue;
      if (own.tagName === "A" && own.closest("p,li") && getComputedStyle(own).display === "inline") continue;
      const box = pressed.getBoundingClientRect();
      const name = `${own.tagName.toLowerCase()} "${(pressed.innerText || own.name || "").trim().slice(0, 40)}"`;
      const size = `${box.width.toFixed(1)} x ${box.height.toFixed(1)}`;
      if (box.width < 23.99 || box.height < 23.99) wrong.push(`target ${name} is ${size}, under 24 (2.5.8)`);
      else if (box.width < AIM - 0.01 || box.height < AIM - 0.01) wrong.push(`target ${name} is ${size}, under our own ${AIM}`);
    }
    return wrong;
  }, AIM);
}

/** Everything at once, in the light theme and in the dark. */
export async function everything(page, { lang }) {
  const wrong = [...(await structure(page, { lang })), ...(await targets(page))];
  // Colours that are still changing would be measured in between: less motion is asked for meanwhile.
  await page.emulateMedia({ colorScheme: "light", reducedMotion: "reduce" });
  wrong.push(...(await axe(page)).map((line) => `light: ${line}`));
  // In the dark the same page has other colours and nothing else.
  await page.emulateMedia({ colorScheme: "dark" });
  wrong.push(...(await axe(page, ["color-contrast", "link-in-text-block"])).map((line) => `dark: ${line}`));
  await page.emulateMedia({ colorScheme: "light", reducedMotion: null });
  return wrong;
}
