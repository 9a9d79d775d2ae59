// Keys, and what can only be said while the page is open. Everything works without this file too.
"use strict";

const keysWanted = () => localStorage.getItem("tidegate-keys") !== "off";

const rows = () => Array.from(document.querySelectorAll(".row .cover"));

function step(by) {
  const all = rows();
  if (all.length === 0) return;
  const here = all.indexOf(document.activeElement);
  const next = here < 0 ? (by > 0 ? 0 : all.length - 1) : Math.min(all.length - 1, Math.max(0, here + by));
  all[next].focus();
}

function press(selector) {
  const target = document.querySelector(selector);
  if (target) target.click();
  return target !== null;
}

function showKeys() {
  const dialog = document.getElementById("keys");
  if (dialog && !dialog.open) dialog.showModal();
}

// What opens a part of the page, or only leads to it, takes the keyboard there; everything else is pressed.
function follow(marked) {
  const part = marked.matches("summary") ? marked.parentElement : null;
  if (part) part.open = true;
  const place = part ? part.querySelector("input:not([type=hidden]), select, button") : marked;
  if (part || marked.hasAttribute("data-lead")) place.focus();
  else marked.click();
}

const actions = {
  "?": showKeys,
  j: () => step(1), ArrowDown: () => step(1),
  k: () => step(-1), ArrowUp: () => step(-1),
  "/": () => { const field = document.getElementById("words"); if (field) { field.focus(); field.select(); } },
  n: () => press("#fresh"),
  p: () => press("a[rel=next]"),
  q: () => { location.href = "/queue"; },
};

const typing = (element) => element.matches("input:not([type=checkbox]):not([type=radio]), textarea, select, [contenteditable]");

document.addEventListener("keydown", (event) => {
  if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return;
  if (typing(event.target)) {
    if (event.key === "Escape") event.target.blur();
    return;
  }
  if (document.querySelector("dialog[open]")) return;
  if (event.key !== "?" && !keysWanted()) return;
  const arrow = event.key === "ArrowDown" || event.key === "ArrowUp";
  if (arrow && rows().length === 0) return;
  const marked = document.querySelector(`[data-key="${CSS.escape(event.key)}"]`);
  const action = marked ? () => follow(marked) : actions[event.key];
  if (action) {
    event.preventDefault();
    action();
  }
});

document.addEventListener("DOMContentLoaded", () => {
  const box = document.getElementById("keys-on");
  if (box) {
    box.checked = keysWanted();
    box.addEventListener("change", () => localStorage.setItem("tidegate-keys", box.checked ? "on" : "off"));
  }
  document.querySelectorAll("[data-shows]").forEach((button) =>
    button.addEventListener("click", () => document.getElementById(button.dataset.shows).showModal()));
  if (matchMedia("(max-width: 900px)").matches) {
    document.querySelectorAll(".filters details").forEach((part) => part.removeAttribute("open"));
  }
});

// The page says so when it cannot hear from the server any more: what it shows may be old.
document.addEventListener("htmx:sendError", () => {
  const news = document.getElementById("news");
  if (news) {
    news.textContent = news.dataset.offline;
    news.classList.add("offline");
  }
});
document.addEventListener("htmx:afterRequest", (event) => {
  if (event.detail.successful) event.detail.elt.classList.remove("offline");
});
// A session that has ended shows the sign-in page, not a piece of it inside another page.
document.addEventListener("htmx:beforeSwap", (event) => {
  if (event.detail.xhr.responseURL.includes("/sign-in")) {
    event.detail.shouldSwap = false;
    location.reload();
  }
});
