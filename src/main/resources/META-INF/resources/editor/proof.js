// Says beside the text what the tree finds and misses, and which healthy systems get a fault, and offers a limit's better place.
import { makeFix } from "./fix.js";
import { later } from "./later.js";

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
    const parts = [];
    parts.push(...proof.condemned.map(sentence => paragraph(sentence, "strong")));
    parts.push(...proof.limits.flatMap(limit => limitParts(view, limit)));
    if (proof.missed.length) parts.push(paragraph("Not always found:"), list(proof.missed));
    if (!parts.length) parts.push(paragraph(proof.named ? "Every fault it names is found, no healthy system gets a fault, every limit is sound." : "It names no fault yet."));
    return parts;
  }

  function limitParts(view, limit) {
    const parts = [paragraph(`${limit.check}, limit at ${limit.at}:`), list(limit.says)];
    if (limit.edits.length) {
      const mend = Object.assign(document.createElement("button"), { type: "button", textContent: `Move it to ${limit.better}` });
      mend.addEventListener("click", () => makeFix(view, limit.edits));
      parts.push(mend);
    }
    return parts;
  }

  function follow(view) {
    place.classList.add("stale");
    for (const mend of place.querySelectorAll("button")) mend.disabled = true; // its places are those of an older text
    wait(signal => ask(view, signal));
  }

  return { follow };
}

function list(sentences) {
  const items = document.createElement("ul");
  items.append(...sentences.map(sentence => filled(document.createElement("li"), sentence)));
  return items;
}

function paragraph(sentence, tag) {
  const words = document.createElement("p");
  return tag ? (words.append(filled(document.createElement(tag), sentence)), words) : filled(words, sentence);
}

/** Words in backticks are the text's own, and set as such. */
function filled(element, sentence) {
  element.append(...sentence.split("`").map((piece, i) => i % 2 ? Object.assign(document.createElement("code"), { textContent: piece }) : piece));
  return element;
}
