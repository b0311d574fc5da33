// Many trees in one file: only one of them is laid out, and a step has an address that says both.
(function () {
'use strict';
const doc = document, LETTERS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_';
let on = null;

function treeOf(page) {
  return page.closest('.tree');
}
// the anchor of a step, as Anchors makes it: five letters of the FNV-1a hash of tree--step
function anchor(name) {
  let hash = 0x811C9DC5, letters = '';
  new TextEncoder().encode(name).forEach(function (b) { hash = Math.imul(hash ^ b, 0x01000193); });
  for (let i = 0; i < 5; i++) letters += LETTERS[hash >>> 6 * i & 63];
  return letters;
}
window.rungbook.trees = {
  treeOf: treeOf,
  find: function (id) { return doc.getElementById(anchor(id)); },
  show: function (page) {
    const tree = treeOf(page);
    if (tree === on) return;
    if (on) on.classList.remove('on');
    if (tree) tree.classList.add('on');
    on = tree;
  }
};
doc.documentElement.classList.add('many');
})();
