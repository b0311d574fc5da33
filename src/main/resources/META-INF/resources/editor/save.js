// Saves the text as a new revision, and shows the difference when somebody else was first.
import { encoded } from "./address.js";

const el = id => document.getElementById(id);
const YEAR_S = 365 * 24 * 3600;

export function saver({ page, path, view, say, saved }) {
  let basedOn = Number(page.dataset.basedOn);
  let savedText = basedOn === 0 ? null : view.state.doc.toString();
  let lost = null;

  addEventListener("beforeunload", event => { if (isDirty()) event.preventDefault(); });
  el("save").addEventListener("click", ask);
  el("saving").addEventListener("close", () => { if (el("saving").returnValue === "save") send(); });
  el("on-top").addEventListener("click", saveOnTop);
  el("take-theirs").addEventListener("click", takeTheirs);

  function isDirty() { return savedText !== null && view.state.doc.toString() !== savedText; }

  function ask() {
    el("saving").returnValue = "";
    el("saving").showModal();
    el(el("author").value ? "message" : "author").focus();
  }

  async function send() {
    const text = view.state.doc.toString();
    const author = el("author").value.trim();
    document.cookie = `rungbook-author=${encodeURIComponent(author)}; Path=/; Max-Age=${YEAR_S}; SameSite=Strict`;
    say("Saving…");
    try {
      const answer = await fetch(`/api/documents/${encoded(path)}`, {
        method: "PUT", headers: { "Content-Type": "application/json" },
        body: JSON.stringify({ basedOn, text, author, message: el("message").value })
      });
      const body = await answer.json();
      if (answer.ok) done(body, text);
      else if (answer.status === 409 && body.draft) conflict(body);
      else say(`Not saved: ${body.detail}; ${body.hint}`);
    } catch {
      say("Not saved: the server does not answer. Your text is kept in this browser; start Rungbook again, then save.");
    }
  }

  function done(entry, text) {
    basedOn = entry.revision;
    savedText = text;
    el("message").value = "";
    say(`Saved as revision ${entry.revision}`);
    saved();
    if (lost) fetch(`/api/drafts/${lost.draft.id}`, { method: "DELETE" });
    lost = null;
    if (page.dataset.view === "/") settle();
  }

  // a new document has a page of its own from now on
  function settle() {
    const address = encoded(path);
    history.replaceState(null, "", `/edit/${address}`);
    page.dataset.view = page.dataset.tree === "true" ? `/tree/${address}` : `/text/${address}`;
    el("close").href = page.dataset.view;
  }

  function conflict(body) {
    lost = body;
    el("conflict-detail").textContent = body.detail;
    const compare = `/history/${encoded(path)}`;
    el("compare").href = `${compare}#draft-${body.draft.id}`;
    showDifference(compare, body.draft.id);
    el("conflict").showModal();
    el("race").focus();
    say("Not saved yet: somebody else saved first");
  }

  async function showDifference(compare, draft) {
    el("race").textContent = "Comparing…";
    try {
      const answer = await fetch(compare, { headers: { Accept: "text/html" } });
      const history = new DOMParser().parseFromString(await answer.text(), "text/html");
      el("race").replaceChildren(history.querySelector(`#draft-${draft} .difference`));
    } catch {
      el("race").textContent = "The difference cannot be shown now. Both texts are kept.";
    }
  }

  function saveOnTop() {
    basedOn = lost.current.entry.revision;
    el("conflict").close();
    send();
  }

  function takeTheirs() {
    basedOn = lost.current.entry.revision;
    savedText = lost.current.text;
    view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: lost.current.text } });
    el("conflict").close();
    say(`Revision ${basedOn}; your own text is kept in the history as a draft`);
    lost = null;
  }

  return { ask, author: () => el("author").value.trim() };
}
