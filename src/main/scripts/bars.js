// Cautions at a step: bars that open in place, and which of them are open.
import { make } from './parts.js';

const doc = document;

function boxes(page) {
  return [].slice.call(page.querySelectorAll('.cautions .caution'));
}
// the address of the caution in full; an open one has it in its last line
function address(box) {
  return (box.matches('a') ? box : box.querySelector('p a')).getAttribute('href');
}
// in the page a caution's words are there once, and a bar leads to them; here they come to the bar
function unfold(bar) {
  const box = make('details', '', bar.className), whole = doc.getElementById(address(bar).slice(1));
  make('summary', '', '', box).append.apply(box.firstChild, bar.childNodes);
  whole.querySelectorAll('.hazard, .avoid').forEach(line => { box.append(line.cloneNode(true), ' '); });
  const more = make('p', '', '', box);
  make('a', 'More', '', more).href = address(bar);
  more.append(' on this.');
  bar.replaceWith(box);
}
// a caution that no step of this path has named is open; so is a danger that the leads touch
export function fold(page, walked) {
  const live = page.classList.contains('live-line'), seen = {};
  walked.forEach(one => { boxes(one).forEach(box => { seen[address(box)] = true; }); });
  page.querySelectorAll('a.caution').forEach(unfold);
  boxes(page).forEach(box => { box.open = !seen[address(box)] || live && box.classList.contains('danger'); });
};
