// Asks again how far long work is, until it has ended; then the page is asked for anew. Without it, there is a link.
"use strict";
(() => {
  const place = document.querySelector(".progress");
  if (!place) return;
  const bar = place.querySelector("progress");
  const words = place.querySelector(".far");
  const look = async () => {
    try {
      const answer = await fetch(place.dataset.again, { credentials: "same-origin" });
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      const next = page.querySelector(".progress");
      if (!next) {
        location.reload();
        return;
      }
      bar.max = next.querySelector("progress").max;
      bar.value = next.querySelector("progress").value;
      // Told to who listens, but not at every step.
      const said = next.querySelector(".far").textContent;
      if (words.textContent !== said) words.textContent = said;
    } catch {
      // The desk may be closed; the link on the page is still there.
      return;
    }
    setTimeout(look, 1500);
  };
  setTimeout(look, 1500);
})();
