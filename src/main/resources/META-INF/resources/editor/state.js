// Shows the one state of the tree, from the check first and from the proof when it is there.
export function showState({ symbol, words }) {
  const place = document.getElementById("treestate");
  if (!place) return; // a shared text has none
  const sign = Object.assign(document.createElement("span"), { className: "letter square", textContent: symbol });
  sign.setAttribute("aria-hidden", "true");
  place.replaceChildren(sign, " ", Object.assign(document.createElement("b"), { textContent: words }));
}
