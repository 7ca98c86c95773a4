// Makes the practice page live: what changes is taken over from the page as
// the server renders it anew, so there is one way in which a ticket looks.
// Without this module the page works by its forms and links alone.

import { forget, ready, remember } from "/words.mjs";
import { bring, settle, steady, tell, untell } from "/view.mjs";

const main = document.querySelector("main");
const said = document.getElementById("said");
const lost = document.getElementById("lost");
let version = Number(main.dataset.version);
let busy = false; // the page is being asked for
let again = false; // and has changed since
let held = false; // something newer waits until nobody types in its place
let pressed = ""; // the button that was used last
let awaited = ""; // where the answer to what was done last will show
let done = ""; // where that was done
const news = new Set(); // what the desk said since, by the keys of its lines

document.querySelector(".again")?.remove();

// take replaces an element by its newer self, unless somebody types in it.
// What had the focus keeps it, or what holds that does.
function take(now, then) {
  if (!now || !then || now.outerHTML === then.outerHTML) return false;
  const focus = now.contains(document.activeElement) ? document.activeElement : null;
  if (focus?.matches("textarea, input, select")) {
    held = true;
    return false;
  }
  const ids = [];
  for (let e = focus; e; e = e.parentElement) if (e.id) ids.push(e.id);
  const open = [...now.querySelectorAll("details")].map((d) => d.open);
  const fresh = document.importNode(then, true);
  now.replaceWith(fresh);
  fresh.querySelectorAll("details").forEach((d, i) => { d.open = open[i] ?? d.open; });
  ready(fresh);
  if (focus) settle(ids.map((id) => document.getElementById(id)).find(Boolean), false);
  return true;
}

// lines are what is read out of what the desk said: the first line of each
// slip, and who stands by it. A picture is described by the line that it
// illustrates, and not read again.
function lines() {
  return [...document.querySelectorAll(".slip.desk")].flatMap((s) => {
    const id = s.closest("[id]").id;
    const read = [s.querySelector(".head, h4, .body"), ...s.querySelectorAll(".context:has(.name)")];
    return read.filter((e) => e?.textContent.trim()).map((e) => ({ at: e, words: e.textContent.trim(), key: id + e.textContent.trim() }));
  });
}

// fold keeps the newest tickets in sight and lays the others away, but for one
// that somebody is at.
function fold(list) {
  const older = document.getElementById("older");
  const away = older.querySelector("ol");
  while (list.children.length > Number(main.dataset.newest)) {
    const last = list.lastElementChild;
    if (last.contains(document.activeElement) || last.querySelector("details[open]")) break;
    away.prepend(last);
  }
  older.hidden = away.children.length === 0;
}

function tickets(list, page) {
  const known = new Set(lines().map((l) => l.key));
  list.querySelector(".none")?.remove();
  for (const then of [...page.querySelectorAll(".ticket")].reverse()) {
    const now = document.getElementById(then.id);
    if (!now) {
      list.prepend(document.importNode(then, true));
      ready(list.firstElementChild);
      continue;
    }
    for (const part of then.querySelectorAll("[data-part]")) {
      take(now.querySelector(`[data-part="${part.dataset.part}"]`), part);
    }
  }
  for (const now of document.querySelectorAll(".ticket")) {
    if (!page.getElementById(now.id)) now.remove();
  }
  fold(list);
  const fresh = lines().filter((l) => !known.has(l.key));
  if (fresh.length > 0) { // what is said twice is read twice: it is a new paragraph
    const words = document.createElement("p");
    words.textContent = fresh.map((l) => main.dataset.said.replace("%s", l.words)).join(" ");
    said.replaceChildren(words);
  }
  for (const l of fresh) news.add(l.key);
}

// lead brings the answer to what was done last into view. It may have come
// before the word that the form was taken.
function lead() {
  const ticket = document.getElementById(awaited)?.closest(".ticket");
  const line = lines().find((l) => news.has(l.key) && (awaited === "tickets" || (ticket && ticket.contains(l.at))));
  if (!line) return;
  if (awaited === "tickets" || document.activeElement === document.body) settle(line.at.closest("[id]"));
  bring(line.at);
  awaited = "";
}

// modal shows what is asked of somebody over all else, until it is over: then
// the focus is back where it was asked for.
function modal(page) {
  const now = document.querySelector("#modal dialog");
  const over = page && now && !page.querySelector("#modal dialog");
  if (over) {
    now.querySelectorAll("form").forEach(forget);
    now.close();
  }
  if (page) take(document.getElementById("modal"), page.getElementById("modal"));
  const asked = document.querySelector("#modal dialog[open]");
  for (const e of document.querySelectorAll("body > [inert]")) e.inert = false;
  if (over) settle(document.getElementById(pressed) ?? document.getElementById(done));
  if (!asked || asked.matches(":modal")) return;
  asked.open = false;
  asked.showModal();
  asked.querySelector("textarea, input:not([type=hidden]), select")?.focus();
}

// show takes over what changed.
function show(page) {
  const next = page.querySelector("main");
  if (!next || Number(next.dataset.version) < version) return; // overtaken
  version = Number(next.dataset.version);
  held = false;
  modal(page);
  const list = document.getElementById("tickets");
  steady(() => {
    take(document.getElementById("home"), page.getElementById("home"));
    take(document.getElementById("next"), page.getElementById("next"));
    if (list && page.getElementById("tickets")) tickets(list, page);
  });
  lead();
}

const read = (html) => new DOMParser().parseFromString(html, "text/html");

// undrafted is the page's address without what it was opened for.
function undrafted() {
  const at = new URL(location.href);
  for (const once of ["note", "at", "draft", "for"]) at.searchParams.delete(once);
  return at;
}

async function refresh() {
  again = true;
  if (busy) return;
  busy = true;
  try {
    while (again) {
      again = false;
      const answer = await fetch(undrafted());
      if (answer.ok) show(read(await answer.text()));
    }
  } catch {
    lost.hidden = false; // it is asked for again at the next change
  } finally {
    busy = false;
  }
}

document.addEventListener("focusout", () => { if (held) setTimeout(refresh); });

// sent is what comes after a form was taken: its field is empty, the next
// ticket is for the desk again, and what it did is in view.
function sent(form, action, page, at, opener) {
  if (action === "/press") pressed = opener;
  history.replaceState(history.state, "", undrafted()); // a reload does not fill it in again
  if (action !== "/submit") forget(form); // what came into it on the way is of it
  for (const area of form.querySelectorAll("textarea")) {
    if (action !== "/submit") area.value = action === "/correct" ? area.defaultValue : "";
    area.blur();
  }
  for (const tick of form.querySelectorAll("input[type=checkbox][name=desk]")) tick.checked = tick.defaultChecked;
  const folded = form.closest("details:not(#older)");
  if (folded) folded.open = false;
  done = at;
  awaited = action === "/say" ? "" : at; // a ticket first has the focus
  show(page);
  const place = at === "tickets" ? document.getElementById("list") : document.getElementById(at);
  if (action === "/say") settle(place);
  else if (document.activeElement === document.body) settle(document.getElementById(opener) ?? place);
  awaited = at;
  lead();
}

let leaving = false;
addEventListener("beforeunload", () => { leaving = true; });

// A form is sent without leaving the page. Where that fails, it says so and
// keeps what it has.
document.addEventListener("submit", async (event) => {
  const form = event.target;
  const action = form.getAttribute("action"); // a form of buttons has a field of that name
  if (form.method !== "post" || action === "/front") return;
  event.preventDefault();
  if (form.dataset.sending) return;
  form.dataset.sending = "yes";
  const opener = (event.submitter ?? document.activeElement).id;
  untell();
  news.clear();
  if (action !== "/submit") forget(form); // who leaves before it is taken does not find it in the box again
  try {
    const answer = await fetch(action, { method: "post", keepalive: true, body: new URLSearchParams(new FormData(form, event.submitter)) });
    if (!answer.ok) throw new Error(answer.statusText);
    const at = new URL(answer.url);
    const note = at.searchParams.get("note");
    const page = read(await answer.text());
    if (!note) {
      sent(form, action, page, at.searchParams.get("at") ?? "", opener);
    } else {
      remember(form);
      show(page);
    }
    const words = page.querySelector(".told, #note");
    if (note && words) tell(form, words.textContent, words.classList.contains("good"));
  } catch {
    if (leaving) return; // it goes on without the page
    remember(form);
    tell(form, main.dataset.unsent, false);
  } finally {
    delete form.dataset.sending;
  }
});

// Who closes what is asked of them does not answer it.
document.addEventListener("cancel", (event) => {
  if (event.target.matches("#modal dialog")) document.getElementById("dismiss").requestSubmit();
}, true);

// Who does something else meanwhile is not led away from it.
for (const kind of ["pointerdown", "wheel", "keydown"]) {
  document.addEventListener(kind, () => { awaited = ""; }, { capture: true, passive: true });
}

ready(document);
modal();

const changes = new EventSource(`/changes?after=${version}`);
changes.addEventListener("open", () => { lost.hidden = true; });
changes.addEventListener("error", () => { lost.hidden = false; });
changes.addEventListener("message", (event) => { if (Number(event.data) !== version) refresh(); });
