// A calendar file read as RFC 5545 says, no more of it than the tests ask: content lines, unfolding,
// components. Throws at the first line that breaks a rule.

import assert from "node:assert/strict";

/** The lines of a calendar, unfolded, as [name, parameters, value]. */
export function calendarLines(text) {
  // RFC 5545, 3.1: lines end with CR LF and are no longer than 75 octets without it.
  assert.ok(text.endsWith("\r\n"), "the last line ends with CR LF (3.1)");
  const raw = text.slice(0, -2).split("\r\n");
  for (const line of raw) {
    assert.ok(!/[\r\n]/.test(line), "a bare CR or LF (3.1)");
    assert.ok(Buffer.byteLength(line) <= 75, `a line of ${Buffer.byteLength(line)} octets (3.1)`);
  }
  const whole = text.slice(0, -2).replace(/\r\n[ \t]/g, "").split("\r\n");
  return whole.map((line) => {
    const parts = /^([A-Z0-9-]+)((?:;[A-Z0-9-]+=(?:"[^"]*"|[^";:,]*))*):(.*)$/.exec(line);
    assert.ok(parts, `no content line (3.1): ${line}`);
    return [parts[1], parts[2], parts[3]];
  });
}

/** The events of a calendar, each as a map of its properties; what surrounds them is checked. */
export function events(text) {
  const lines = calendarLines(text);
  const open = [];
  const found = [];
  const calendar = new Map();
  let own;
  for (const [name, , value] of lines) {
    if (name === "BEGIN") {
      open.push(value);
      if (value === "VEVENT") own = new Map();
    } else if (name === "END") {
      assert.equal(open.pop(), value, "components are nested (3.4)");
      if (value === "VEVENT") found.push(own);
    } else if (open.at(-1) === "VEVENT") {
      own.set(name, value);
    } else if (open.at(-1) === "VCALENDAR") {
      calendar.set(name, value);
    }
  }
  assert.deepEqual(open, [], "every component is closed (3.4)");
  assert.equal(lines[0].join(""), "BEGINVCALENDAR");
  // 3.6: PRODID and VERSION are required; 3.6.1: UID and DTSTAMP, and DTSTART where there is no METHOD.
  assert.equal(calendar.get("VERSION"), "2.0");
  assert.ok(calendar.get("PRODID"));
  for (const event of found) {
    for (const name of ["UID", "DTSTAMP", "DTSTART"]) assert.ok(event.has(name), `no ${name} (3.6.1)`);
    // 3.3.5: a UTC stamp.
    assert.match(event.get("DTSTAMP"), /^\d{8}T\d{6}Z$/);
  }
  return found;
}
