// Where the eye and the focus of a person go on the page.

// clear says whether the head of something can be read: below the line that
// stays on top, above the edge of the screen or of a keyboard over it.
function clear(e) {
  const head = (e.querySelector(".head, h4, .body") ?? e).getBoundingClientRect();
  const top = document.querySelector(".you").getBoundingClientRect().bottom;
  return head.top >= Math.max(0, Math.min(top, innerHeight / 2)) && head.bottom <= (window.visualViewport?.height ?? innerHeight);
}

// whole says whether all of something is on the screen.
function whole(e) {
  const box = e.getBoundingClientRect();
  const top = document.querySelector(".you").getBoundingClientRect().bottom;
  return box.top >= Math.max(0, Math.min(top, innerHeight / 2)) && box.bottom <= innerHeight;
}

// bring scrolls something into view that is not: of a line of an answer, as
// much of the answer as the screen holds, with its buttons.
export function bring(e) {
  for (let folded = e.closest("details:not([open])"); folded; folded = folded.parentElement.closest("details:not([open])")) {
    if (folded !== e) folded.open = true;
  }
  const all = e.matches(".head, h4, .body, .context") ? e.closest(".thread > li") ?? e : e;
  if (clear(e) && (all === e || whole(all))) return;
  all.scrollIntoView({ block: all.offsetHeight < innerHeight / 2 ? "nearest" : "start" });
}

// settle puts the focus on something, and brings it into view.
export function settle(e, seen = true) {
  if (!e) return;
  e.focus({ preventScroll: true });
  if (document.activeElement !== e) e.querySelector("button, a, summary")?.focus({ preventScroll: true });
  if (seen) bring(e);
}

// steady changes the page and leaves what somebody is at where it is on the
// screen: what has the focus if that shows, or else the first part that does.
// Some browsers do that by themselves, by a part of their own choice.
export function steady(change) {
  const shows = (e) => { const box = e.getBoundingClientRect(); return box.height > 0 && box.bottom > 0 && box.top < innerHeight; };
  const focus = document.activeElement.closest("main [id]");
  const eye = focus && shows(focus) ? focus : [...document.querySelectorAll("#tickets [id]")].find(shows);
  const was = eye?.getBoundingClientRect().top;
  change();
  const now = eye && document.getElementById(eye.id);
  if (now) scrollBy({ top: now.getBoundingClientRect().top - was, behavior: "instant" });
}

// untell takes back what was said of an earlier form.
export function untell() {
  for (const note of document.querySelectorAll(".told, #note")) note.remove();
}

// tell says something right by the form that it is about.
export function tell(form, words, good) {
  const note = document.createElement("p");
  note.className = good ? "note told good" : "note told";
  note.setAttribute("role", "alert");
  const beside = form.closest(".row");
  if (!form.isConnected) document.querySelector("main").prepend(note);
  else if (beside) beside.after(note);
  else form.append(note);
  note.textContent = words;
  bring(note);
}

// Who opens a field is about to write in it.
document.addEventListener("click", (event) => {
  const folded = event.target.closest?.("summary")?.parentElement;
  if (!folded || folded.open || !folded.matches(".more, .correct")) return;
  folded.addEventListener("toggle", () => { if (folded.open) folded.querySelector("textarea").focus(); }, { once: true });
});
