// Which faults the answers so far leave, and what they prove good in the circuit. The page has, for each answer, the faults with
// which it can be given: see FaultCode.
import { make, ways } from './parts.js';
import { walk } from './walk.js';

const doc = document;

function faults(code) {
  const found = [];
  [].forEach.call(atob(code), (c, i) => {
    for (let bit = 0; bit < 8; bit++) if (c.charCodeAt(0) >> bit & 1) found.push(8 * i + bit);
  });
  return found;
}
function common(left, element) {
  const own = element && element.dataset.f;
  return own === undefined || own === null ? left : faults(own).filter(fault => left.includes(fault));
}
export function where(page, way) {
  const told = page.querySelector('.circuit [data-f]');
  if (!told) return;
  const fold = told.closest('details'), list = fold.querySelector('ol'), likely = page.parentNode.querySelector('.start').dataset.l.split(' ');
  // another tree is for another complaint, which other faults can give
  const known = way.every(taken => taken.tree === walk.treeOf(page));
  const left = way.reduce((rest, taken) => {
    const from = walk.pageOf(taken);
    return common(rest, from && ways(from)[taken.way]);
  }, faults(told.dataset.f)).sort((one, other) => likely[other] - likely[one]);
  const names = walk.byId(fold.querySelector('a').hash.slice(1)).querySelectorAll('.faults li');
  const all = left.reduce((sum, fault) => sum + +likely[fault], 0);
  fold.classList.toggle('unknown', !known);
  told.textContent = 'Still possible: ' + left.length;
  list.textContent = '';
  left.forEach(fault => {
    const item = make('li', names[fault].textContent + ' ', '', list);
    make('i', (Math.round(100 * likely[fault] / all) || 'under 1') + ' %', '', item);
  });
  doc.querySelectorAll('g[data-f]').forEach(part => {
    const may = common(left, part).length;
    part.classList.toggle('may', known && may);
    part.classList.toggle('firm', known && !may && faults(part.dataset.f).some(fault => +likely[fault]));
  });
}
