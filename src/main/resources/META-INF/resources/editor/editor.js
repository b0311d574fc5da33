// The editor page: a text, what is wrong with it, and how it will look.
import { EditorView, undo, redo, startCompletion, openSearchPanel } from "../vendor/codemirror.js";
import { textEditor } from "./text.js";
import { vocabulary } from "./words.js";
import { problemList } from "./problems.js";
import { tabs, previewer } from "./preview.js";
import { saver } from "./save.js";
import { stepInserter } from "./insert.js";
import { pictureTaker } from "./pictures.js";
import { keeper } from "./keep.js";
import { prover } from "./proof.js";

const page = document.getElementById("editor");
const area = document.getElementById("text");
const path = page.dataset.path;
const state = document.getElementById("state");
const say = message => { state.textContent = message; };

const words = vocabulary();
const problems = problemList(path, document.getElementById("problems"), document.getElementById("count"));
const preview = previewer(path, document.getElementById("preview"));
const keep = keeper(path, say, page.dataset.view === "/");
const proof = prover(path, document.getElementById("proof"), document.getElementById("provedcount"));

const view = textEditor({
  area, path, words,
  nonce: document.querySelector("meta[name=style-nonce]").content,
  changed: editor => {
    keep.changed(editor);
    problems.check(editor);
    proof.follow(editor);
    preview.show(editor);
    words.follow(editor.state.doc);
  },
  moved: editor => preview.show(editor),
  save: () => save.ask()
});

const save = saver({ page, path, view, say, saved: () => keep.forget() });
tabs(document.querySelector("[role=tablist]"), () => preview.show(view));
stepInserter(document.querySelectorAll("[data-insert]"), view);
pictureTaker({ input: document.getElementById("picture"), view, path, say, author: () => save.author() });
document.getElementById("undo").addEventListener("click", () => { undo(view); view.focus(); });
document.getElementById("redo").addEventListener("click", () => { redo(view); view.focus(); });
document.getElementById("find").addEventListener("click", () => openSearchPanel(view));
document.getElementById("complete").addEventListener("click", () => { view.focus(); startCompletion(view); });
problems.onChoose(offset => {
  view.dispatch({ selection: { anchor: Math.min(offset, view.state.doc.length) }, effects: EditorView.scrollIntoView(offset, { y: "center" }) });
  view.focus();
});

const line = view.state.doc.line(Math.min(Math.max(1, Number(page.dataset.line)), view.state.doc.lines));
view.dispatch({ selection: { anchor: line.from }, effects: EditorView.scrollIntoView(line.from, { y: "center" }) });
words.follow(view.state.doc);
problems.check(view);
proof.follow(view);
preview.show(view);
keep.offer(view);
view.focus({ preventScroll: true });
