// What the pages do beyond their forms. Without it every form still sends by its button.
"use strict";

// A choice in the head line is sent as it is made.
document.addEventListener("change", (event) => {
  if (event.target.matches("[data-sends]")) event.target.form.submit();
});

// An answer to an older state of the plan never takes the place of a newer one.
let newest = 0;
document.addEventListener("htmx:beforeSwap", (event) => {
  const revision = Number(event.detail.xhr.getResponseHeader("Tideover-Revision"));
  if (!revision) return;
  if (revision < newest) {
    event.detail.shouldSwap = false;
  } else {
    newest = revision;
  }
});

// A line's place for what the plan holds is renewed. The field follows, unless something else is being typed in it: then the
// plan's older value stays noted, so that a change made elsewhere is noticed when this one is sent. What is wrong is told to
// whoever reads by ear, too.
document.addEventListener("htmx:oobBeforeSwap", (event) => {
  const held = event.detail.target;
  if (!held.classList.contains("held")) return;
  const field = document.getElementById(held.dataset.for);
  const before = held.querySelector("[name=was]");
  const after = event.detail.fragment.querySelector("[name=was]");
  if (!field || !before || !after) return;
  if (field.value === before.value || field.value === after.value) {
    if (field.value !== after.value) field.value = after.value;
  } else {
    after.setAttribute("value", before.value);
  }
  const renewed = after.closest(".held");
  if (renewed.dataset.wrong === "true") field.setAttribute("aria-invalid", "true");
  else field.removeAttribute("aria-invalid");
});

// Stations are offered as their name is typed.
let asked = 0;
document.addEventListener("input", (event) => {
  const list = event.target.getAttribute("list");
  if (list !== "stations" || event.target.value.trim().length < 2) return;
  const mine = ++asked;
  setTimeout(async () => {
    if (mine !== asked) return;
    const found = await fetch("/stations?q=" + encodeURIComponent(event.target.value));
    if (found.ok && mine === asked) document.getElementById("stations").innerHTML = await found.text();
  }, 150);
});

// The server is gone, or the page is from before it was started again.
document.addEventListener("htmx:sendError", () => tell("Tideover does not answer: is it still running? What you typed last is not kept yet."));
document.addEventListener("htmx:responseError", (event) => {
  const words = new DOMParser().parseFromString(event.detail.xhr.responseText, "text/html").querySelector(".problem");
  tell(words ? words.textContent : "That did not work (" + event.detail.xhr.status + ").");
});
function tell(words) {
  const place = document.getElementById("clashes");
  if (!place) return;
  const box = document.createElement("div");
  box.className = "clash";
  const line = document.createElement("p");
  line.textContent = words;
  box.append(line);
  place.replaceChildren(box);
}
