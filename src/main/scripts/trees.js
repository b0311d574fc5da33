// Many trees in one file. Only the one in use is in the document: a tap takes as long as in a pack of that tree alone, however
// many there are beside it, since a browser goes through all links of a document at each step.
const doc = document, root = doc.documentElement, main = doc.querySelector('main');
const LETTERS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_';
const places = {};
let open = null;

doc.querySelectorAll('.tree').forEach(tree => {
  tree.querySelectorAll('[id]').forEach(place => { places[place.id] = place; });
  tree.remove();
});
function treeOf(page) {
  return page.closest('.tree');
}
// the anchor of a step, as ShortAnchors makes it: five letters of the FNV-1a hash of tree--step
function anchor(name) {
  let hash = 0x811C9DC5, letters = '';
  new TextEncoder().encode(name).forEach(b => { hash = Math.imul(hash ^ b, 0x01000193); });
  for (let i = 0; i < 5; i++) letters += LETTERS[hash >>> 6 * i & 63];
  return letters;
}
export const trees = {
  treeOf: treeOf,
  // the place of any tree that an address names, in its short form or as tree--step
  find: id => places[id] || places[anchor(id)],
  show: page => {
    const tree = treeOf(page);
    root.classList.toggle('inside', !!tree);
    if (!tree || tree === open) return;
    if (open) open.remove();
    main.appendChild(tree);
    open = tree;
  }
};
