// Fetches a tree's proof after its page has loaded, and shows the shares in the page's own map.
import { openMap } from "./map.js";

const place = document.getElementById("proof");
if (place) {
  const href = document.getElementById("proved").dataset.href;
  const link = place.firstElementChild;
  place.prepend(Object.assign(document.createElement("p"), { textContent: "Proving…" }));
  try {
    const answer = await fetch(href, { headers: { Accept: "text/html" } });
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const proof = page.getElementById("proof");
    if (!answer.ok || !proof) throw new Error(page.querySelector("main p")?.textContent ?? `the server answered ${answer.status}`);
    show(proof);
  } catch (failure) {
    place.replaceChildren(Object.assign(document.createElement("p"), { textContent: `Not proved now: ${failure.message}` }), link);
  }
}

function show(proof) {
  place.removeAttribute("aria-live"); // a whole report is to be read, not spoken at once
  const frame = document.querySelector(".mapframe");
  const map = proof.querySelector(".provedmap");
  if (map) {
    frame.replaceChildren(...map.childNodes);
    frame.before(proof.querySelector("#provedmap-about"));
    openMap(frame);
    map.previousElementSibling.remove();
    map.remove();
  }
  proof.querySelectorAll(".excluded").forEach(mark);
  if (proof.querySelector("#todo")) lift(proof); // a tree that is not proved has none
  place.replaceChildren(...proof.childNodes);
}

/** What the proof says of a finding is at its step too. */
function mark(said) {
  const id = said.closest("li").querySelector("h4 a").hash.slice(1);
  document.getElementById(decodeURIComponent(id))?.querySelector("h2")?.after(said.cloneNode(true));
}

function lift(proof) {
  const state = proof.querySelector("#provedstate");
  document.getElementById("treestate").replaceChildren(...state.childNodes);
  state.remove();
  document.getElementById("treetodo").replaceChildren(toDo(proof));
}

/** What to do comes to the top of the page, where its heading is one level higher. */
function toDo(proof) {
  const part = proof.querySelector("#todo");
  const title = part.querySelector("h3");
  title.replaceWith(Object.assign(document.createElement("h2"), { id: title.id, textContent: title.textContent }));
  return part;
}
