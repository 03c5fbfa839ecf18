// The clock of a practice and the breath to follow. Decides nothing: the page says where the practice stood
// when it was made, and this draws how it goes on. What counts as practised is decided by the server, which
// is told every few seconds that the page is still there.
"use strict";

// What a breath is doing after so many milliseconds: the phase, how far it is, which breath, and the time
// left of the phase. The same as the core's own function.
function breathAt(pacer, millis) {
  if (millis >= pacer.whole_millis) return { over: true };
  let within = millis % pacer.breath_millis;
  const breath = Math.floor(millis / pacer.breath_millis);
  for (const phase of pacer.phases) {
    if (within < phase.millis) {
      const left = phase.millis - within;
      return { over: false, breath, phase, progress: within / phase.millis, left };
    }
    within -= phase.millis;
  }
  return { over: true };
}

// How wide the shape is drawn, from 0 to 1.
function widthOf(now) {
  if (now.over) return 0;
  switch (now.phase.phase) {
    case "in": return now.progress;
    case "hold_in": return 1;
    case "out": return 1 - now.progress;
    default: return 0;
  }
}

function clockOf(millis) {
  const seconds = Math.floor(millis / 1000);
  return Math.floor(seconds / 60) + ":" + String(seconds % 60).padStart(2, "0");
}

(function () {
  const place = document.querySelector("[data-practice]");
  if (!place) return;
  const clock = place.querySelector("[data-clock]");
  const shape = place.querySelector("[data-breath]");
  const word = place.querySelector("[data-phase]");
  const pacer = place.dataset.pacer ? JSON.parse(place.dataset.pacer) : null;
  const runs = place.dataset.runs === "true";
  const before = Number(place.dataset.millis);
  const began = performance.now();
  const passed = () => (runs ? performance.now() - began : 0);
  const still = window.matchMedia("(prefers-reduced-motion: reduce)");
  let last = null;
  let sound = null;

  // A browser lets a page sound only after somebody pressed something on it.
  function tone() {
    const Sound = window.AudioContext || window.webkitAudioContext;
    if (!Sound) return;
    sound = sound || new Sound();
    if (sound.state === "suspended") sound.resume();
    const at = sound.currentTime;
    const volume = sound.createGain();
    volume.gain.setValueAtTime(0, at);
    volume.gain.linearRampToValueAtTime(0.15, at + 0.05);
    volume.gain.exponentialRampToValueAtTime(0.001, at + 0.6);
    const swing = sound.createOscillator();
    swing.frequency.value = 330;
    swing.connect(volume).connect(sound.destination);
    swing.start(at);
    swing.stop(at + 0.65);
  }

  function tell(text) {
    for (const cue of pacer.cues) {
      if (cue === "tone") tone();
      if (cue === "vibration" && navigator.vibrate) navigator.vibrate(80);
      if (cue === "word" && window.speechSynthesis) {
        const said = new SpeechSynthesisUtterance(text);
        said.lang = document.documentElement.lang;
        window.speechSynthesis.speak(said);
      }
    }
  }

  function draw() {
    const millis = before + passed();
    clock.textContent = clockOf(millis);
    if (pacer && word && (runs || before > 0)) {
      const now = breathAt(pacer, millis);
      const text = now.over ? pacer.over : now.phase.word;
      const key = now.over ? "over" : now.breath + " " + now.phase.phase;
      if (key !== last) {
        if (last !== null && runs) tell(text);
        last = key;
        word.textContent = text;
        place.dataset.at = key;
      }
      const width = still.matches ? 0.6 : widthOf(now);
      shape.style.setProperty("--width", width.toFixed(4));
    }
    if (runs) window.requestAnimationFrame(draw);
  }
  draw();
  if (!runs) return;

  // The page is asked for again when the clock reaches what the server named.
  const next = Number(place.dataset.nextIn);
  if (place.dataset.nextIn !== undefined && next < 2 ** 31) {
    window.setTimeout(() => window.location.replace("/practice"), next + 50);
  }
  const often = Math.max(1000, Number(place.dataset.seenEvery) / 3);
  window.setInterval(() => {
    const form = new URLSearchParams();
    fetch("/practice/seen", { method: "POST", body: form, keepalive: true }).catch(() => {});
  }, often);
  if (navigator.wakeLock) {
    const keepOn = () => navigator.wakeLock.request("screen").catch(() => {});
    keepOn();
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "visible") keepOn();
    });
  }
})();
