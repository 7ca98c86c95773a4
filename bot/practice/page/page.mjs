// Makes the practice page live: what changes is taken over from the page as
// the server renders it anew, so there is one way in which a ticket looks.
// Without this module the page works by its forms and links alone.

const main = document.querySelector("main");
const said = document.getElementById("said");
const lost = document.getElementById("lost");
let version = Number(main.dataset.version);
let busy = false; // the page is being asked for
let again = false; // and has changed since
let held = false; // something newer waits until nobody types in its place

document.querySelector(".again")?.remove();

// take replaces an element by its newer self, unless somebody types in it.
function take(now, then) {
  if (!now || !then || now.outerHTML === then.outerHTML) return false;
  if (now.contains(document.activeElement) && document.activeElement.matches("textarea, input, select")) {
    held = true;
    return false;
  }
  const open = [...now.querySelectorAll("details")].map((d) => d.open);
  const focus = now.contains(document.activeElement) ? document.activeElement.closest("[id]")?.id : "";
  const fresh = document.importNode(then, true);
  now.replaceWith(fresh);
  fresh.querySelectorAll("details").forEach((d, i) => { d.open = open[i] ?? d.open; });
  if (focus) document.getElementById(focus)?.querySelector("button, a, summary")?.focus();
  return true;
}

// heads are the first lines of what the desk said, which are read out. A
// picture is described by the line that it illustrates, and not read again.
function heads(root) {
  return [...root.querySelectorAll(".slip.desk")].map((s) => {
    const first = s.querySelector(".head, h4, .body");
    return [s.closest("[id]").id, first ? first.textContent.trim() : ""];
  });
}

function tickets(list, page) {
  const known = new Map(heads(document));
  list.querySelector(".none")?.remove();
  for (const then of [...page.querySelectorAll("#tickets > .ticket")].reverse()) {
    const now = document.getElementById(then.id);
    if (!now) {
      list.prepend(document.importNode(then, true));
      continue;
    }
    for (const part of then.querySelectorAll("[data-part]")) {
      take(now.querySelector(`[data-part="${part.dataset.part}"]`), part);
    }
  }
  for (const now of list.querySelectorAll(":scope > .ticket")) {
    if (!page.getElementById(now.id)) now.remove();
  }
  const fresh = heads(document).filter(([id, words]) => words && known.get(id) !== words);
  if (fresh.length > 0) {
    said.textContent = fresh.map(([, words]) => main.dataset.said.replace("%s", words)).join(" ");
  }
}

function show(html) {
  const page = new DOMParser().parseFromString(html, "text/html");
  const next = page.querySelector("main");
  if (!next) return;
  take(document.getElementById("note"), page.getElementById("note"));
  if (Number(next.dataset.version) < version) return; // overtaken
  version = Number(next.dataset.version);
  held = false;
  const asked = document.querySelector("#modal [role=dialog]");
  for (const id of ["modal", "home"]) {
    take(document.getElementById(id), page.getElementById(id));
  }
  if (!asked) document.querySelector("#modal")?.querySelector("textarea, input:not([type=hidden]), select")?.focus();
  const list = document.getElementById("tickets");
  if (list && page.getElementById("tickets")) tickets(list, page);
}

async function refresh() {
  again = true;
  if (busy) return;
  busy = true;
  try {
    while (again) {
      again = false;
      const at = new URL(location.href);
      at.searchParams.delete("note");
      at.searchParams.delete("draft");
      const answer = await fetch(at);
      if (answer.ok) show(await answer.text());
    }
  } finally {
    busy = false;
  }
}

document.addEventListener("focusout", () => { if (held) setTimeout(refresh); });

// A form is sent without leaving the page; where that fails, it is sent the
// plain way.
document.addEventListener("submit", async (event) => {
  const form = event.target;
  const action = form.getAttribute("action"); // a form of buttons has a field of that name
  if (form.method !== "post" || action === "/front") return;
  event.preventDefault();
  if (form.dataset.sending) return;
  form.dataset.sending = "yes";
  try {
    const answer = await fetch(action, { method: "post", body: new URLSearchParams(new FormData(form, event.submitter)) });
    if (!answer.ok) throw new Error(answer.statusText);
    const note = new URL(answer.url).searchParams.get("note");
    for (const area of form.querySelectorAll("textarea")) {
      if (note) break;
      area.value = "";
      area.blur();
    }
    const details = form.closest("details");
    if (details && !note) details.open = false;
    if (!note) history.replaceState(null, "", answer.url);
    show(await answer.text());
    if (note) form.querySelector("textarea, input:not([type=hidden])")?.focus();
    else if (details) details.querySelector("summary")?.focus();
    else form.querySelector("textarea")?.focus();
  } catch {
    form.submit();
  } finally {
    delete form.dataset.sending;
  }
});

// Enter alone makes a new line; with a control key it sends.
document.addEventListener("keydown", (event) => {
  if (event.key === "Enter" && (event.ctrlKey || event.metaKey) && event.target.form) {
    event.preventDefault();
    event.target.form.requestSubmit();
  }
});

const changes = new EventSource(`/changes?after=${version}`);
changes.addEventListener("open", () => { lost.hidden = true; });
changes.addEventListener("error", () => { lost.hidden = false; });
changes.addEventListener("message", (event) => { if (Number(event.data) !== version) refresh(); });
