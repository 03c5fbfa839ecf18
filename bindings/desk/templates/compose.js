// Says back what is typed, while it is typed. Nothing is kept by it; without it, saving says it back.
"use strict";
(() => {
  const form = document.querySelector("form[data-say-to]");
  const said = document.querySelector("[data-said]");
  if (!form || !said) return;
  let waits = 0;
  let asked = 0;
  const say = async () => {
    const own = ++asked;
    try {
      const answer = await fetch(form.dataset.sayTo, {
        method: "POST",
        body: new URLSearchParams(new FormData(form)),
      });
      if (!answer.ok) return;
      const sentences = await answer.json();
      // A later question was asked while this one was answered.
      if (own !== asked) return;
      said.replaceChildren(...sentences.map((sentence) => {
        const line = document.createElement("p");
        line.textContent = sentence;
        return line;
      }));
    } catch {
      // The desk was stopped or locked: what stands there was true when it was said.
    }
  };
  form.addEventListener("input", () => {
    clearTimeout(waits);
    waits = setTimeout(say, 300);
  });
})();
