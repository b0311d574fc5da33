// Says beside the text what to do about the tree after its proof, and offers to move a limit.
import { EditorView } from "../vendor/codemirror.js";
import { makeFix } from "./fix.js";
import { later } from "./later.js";
import { showState } from "./state.js";

const PAUSE_MS = 500;
const AGAIN_MS = 2000;

export function prover(path, place, count) {
  if (!place) return { follow() {} }; // shared texts are not proved
  const wait = later(PAUSE_MS);
  let shown = "";

  async function ask(view, signal) {
    const text = view.state.doc.toString();
    place.setAttribute("aria-busy", "true");
    try {
      const answer = await fetch("/api/proof", {
        method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ path, text }), signal
      });
      take(view, text, answer, await answer.json());
    } catch (failure) {
      if (failure.name === "AbortError") throw failure;
      write("", "", [paragraph("Not proved now: the server does not answer")]);
    }
  }

  function take(view, text, answer, body) {
    if (view.state.doc.toString() !== text) return;
    place.setAttribute("aria-busy", "false");
    place.classList.remove("stale");
    if (answer.ok) showState(body.state);
    if (answer.status === 409) setTimeout(() => follow(view), AGAIN_MS); // the same tree is being typed elsewhere
    else if (!answer.ok) write("", "", [paragraph(`Not proved now: ${body.detail}; ${body.hint}`)]);
    else if (body.unproved) write(text, "", [paragraph(body.unproved)]);
    else write(text, `(${body.found} of ${body.named} faults found)`, report(view, body));
  }

  function write(key, words, parts) {
    if (key && key === shown) {
      for (const mend of place.querySelectorAll("button")) mend.disabled = false;
      return;
    }
    shown = key;
    count.textContent = words;
    place.replaceChildren(...parts);
  }

  function report(view, proof) {
    if (proof.toDo.length) return [list(view, proof.toDo), ...(proof.behind ? [paragraph(proof.behind)] : [])];
    return [paragraph(proof.named ? "Nothing: the proof asks for no change." : "It names no fault yet.")];
  }

  function list(view, toDo) {
    const items = document.createElement("ol");
    items.className = "todo";
    items.append(...toDo.map(one => item(view, one)));
    return items;
  }

  function item(view, one) {
    const row = document.createElement("li");
    row.append(paragraph(one.what, "what"), paragraph(one.why));
    if (one.file === path) row.append(button("Show it", "show", () => show(view, one.from)));
    if (one.file === path && one.edits.length) row.append(button(one.fix[0].toUpperCase() + one.fix.slice(1), "fix", () => makeFix(view, one.edits)));
    return row;
  }

  function follow(view) {
    place.classList.add("stale");
    for (const mend of place.querySelectorAll("button")) mend.disabled = true; // its places are those of an older text
    wait(signal => ask(view, signal));
  }

  return { follow };
}

function button(words, style, action) {
  const press = document.createElement("button");
  press.type = "button";
  press.className = style;
  const label = filled(document.createElement("span"), words); // the button sets each of its children apart
  press.append(label);
  press.addEventListener("click", action);
  return press;
}

function show(view, from) {
  view.dispatch({ selection: { anchor: from }, effects: EditorView.scrollIntoView(from, { y: "center" }) });
  view.focus();
}

function paragraph(sentence, style = "") {
  return filled(Object.assign(document.createElement("p"), { className: style }), sentence);
}

/** Words in backticks are the text's own, and set as such. */
function filled(element, sentence) {
  element.append(...sentence.split("`").map((piece, i) => i % 2 ? Object.assign(document.createElement("code"), { textContent: piece }) : piece));
  return element;
}
