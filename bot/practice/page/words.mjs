// Keeps what is typed until it is sent: over a reload, another language,
// another role, and a page that cannot be reached.

// slot is the name of what is kept: of a job and ticket, whoever types.
function slot(area) {
  const form = area.form;
  const own = (name) => form.elements.namedItem(name)?.value ?? "";
  const action = form.getAttribute("action");
  const whose = own("job") === "direct" || action === "/submit" ? own("who") : "";
  return ["words", action, own("job"), whose, own("thread") || own("ts"), area.name].join(" ");
}

// kept reads the store, which a browser may keep shut.
function kept(area) {
  try {
    return sessionStorage.getItem(slot(area));
  } catch {
    return null;
  }
}

function keep(area) {
  try {
    if (area.value === area.defaultValue || !area.value) sessionStorage.removeItem(slot(area));
    else sessionStorage.setItem(slot(area), area.value);
  } catch { /* then they live as long as the page */ }
}

// forget drops what a form was sent with.
export function forget(form) {
  for (const area of form.querySelectorAll("textarea")) {
    try {
      sessionStorage.removeItem(slot(area));
    } catch { /* nothing was kept */ }
  }
}

// remember keeps what a form that was not taken still holds.
export function remember(form) {
  form.querySelectorAll("textarea").forEach(keep);
}

const came = performance.getEntriesByType("navigation")[0]?.type;

// ready gives the fields of a part of the page back what was typed there. A
// question to try that has just been filled in stays.
export function ready(root) {
  for (const area of root.querySelectorAll("form textarea")) {
    const asks = area.form.getAttribute("action") === "/say";
    if (asks) area.enterKeyHint = "send";
    const words = kept(area);
    if (words === null || (asks && area.defaultValue && came === "navigate")) continue;
    area.value = words;
    const folded = area.closest("details");
    if (folded) folded.open = true;
  }
}

document.addEventListener("input", (event) => {
  if (event.target.matches("form textarea")) keep(event.target);
});

// Enter sends a question, and with Shift begins a new line; with a control key
// it sends whatever is typed.
document.addEventListener("keydown", (event) => {
  if (event.key !== "Enter" || event.isComposing || !event.target.matches("form textarea")) return;
  const asks = event.target.form.getAttribute("action") === "/say";
  if (!event.ctrlKey && !event.metaKey && (event.shiftKey || !asks)) return;
  event.preventDefault();
  event.target.form.requestSubmit();
});
