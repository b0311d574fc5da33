// Shows one step at a time. Everything it needs is in the page, and it loads nothing.
import { button, make, ways } from './parts.js';
import { recordPage, resume } from './record.js';
import { share } from './share.js';
import { place, step } from './step.js';
import { trees } from './trees.js';
import { walk } from './walk.js';

const doc = document, root = doc.documentElement, main = doc.querySelector('main');
let way = [], typed = {}, depth = 0, on = null;

// -- the current step. The browser's history keeps how many answers of which record lead to it, so that the phone's own Back
// works and a reload loses nothing
function state() {
  const record = walk.record();
  return { r: record && record.id, n: way.length, d: depth };
}
// the address as it is now kept
function note() {
  try { history.replaceState(state(), '', '#' + location.hash.slice(1).split('~')[0] + walk.tail()); } catch { /* in the page alone */ }
}
function go(id, next) {
  way = next || way;
  depth++;
  const to = encodeURIComponent(id) + walk.tail();
  try { history.pushState(state(), '', '#' + to); } catch { location.hash = to; }
  show();
}
function here() {
  let id = location.hash.slice(1).split('~')[0];
  try { id = decodeURIComponent(id); } catch { /* shown as the start */ }
  const target = id && walk.byId(id);
  const page = target && target.closest('.page');
  // the heading of a fragment is at the top of its first step
  return page && target.classList.contains('taken') ? page : page ? target : doc.getElementById(':start');
}
function show() {
  const at = here(), page = at.closest('.page'), was = on;
  if (on) on.classList.remove('on');
  page.classList.add('on');
  on = page;
  if (trees) trees.show(page);
  root.classList.toggle('first', page.id === ':start');
  if (page !== was) {step(page, way, (words, first) => {
    typed[page.id] = words || first ? { words: words, first: first } : null;
  });}
  if (page === record) write();
  tell(page);
  scrollTo(0, 0);
  place(page);
  if (at !== page) at.scrollIntoView();
  const h = page.querySelector('h2');
  if (h) { h.tabIndex = -1; h.focus({ preventScroll: true }); }
}
addEventListener('popstate', e => {
  if (e.state) { way = walk.at(e.state.r, e.state.n); depth = e.state.d; }
  show();
});
addEventListener('click', function (e) {
  const a = e.target.closest && e.target.closest('a[href]'), page = a && a.closest('.page');
  const to = a && a.getAttribute('href');
  if (!a || e.defaultPrevented || !root.classList.contains('live')) return;
  const index = page ? ways(page).indexOf(a) : -1;
  const next = index < 0 || page.classList.contains('start') ? way : walk.add(way, page, a, index, typed[page.id]);
  // Back to here belongs to the record that this answer may have begun
  if (next !== way) note();
  if (to[0] === '#') {
    e.preventDefault();
    go(decodeURIComponent(to.slice(1)), next);
  } else if (next !== way) {
    way = next;
    note();
    a.href = onward(to, walk.record());
  }
});

// -- above each step: back, the way so far, and behind it what is seldom needed
const bar = doc.querySelector('.bar'), record = make('section', '', 'page record', main);
record.id = ':record';
const back = button('', bar, () => { history.back(); });
back.className = 'back';
back.setAttribute('aria-label', 'Back');
const sofar = make('details', '', 'sofar', bar), sofarHead = make('summary', '', '', sofar), menu = make('div', '', 'menu', sofar);
const walked = make('ol', '', 'walked', menu), tools = make('div', '', 'tools', menu);
bar.insertBefore(back, bar.firstChild);
bar.insertBefore(sofar, back.nextSibling);
const toRecord = button('Field record: share or keep it', tools, () => { go(':record'); });
button(trees ? 'All trees' : 'Start page', tools, () => { go(':start'); });
const toStart = trees && button('Start of this tree', tools, () => { go(trees.treeOf(on).dataset.tree); });
button('Whole procedure, or one step at a time', tools, () => { root.classList.toggle('live'); sofar.open = false; show(); });
const hand = button('', tools, () => { useHand(!root.classList.contains('left')); });
const again = button('Start again, with an empty record', tools, () => { typed = {}; walk.at(); go(':start', []); });
function useHand(left) {
  root.classList.toggle('left', left);
  hand.textContent = left ? 'For the right hand' : 'For the left hand';
  keep('rungbook-hand', left ? 'left' : 'right');
}
// what a person has chosen lasts beyond the page where there is storage
function keep(name, value) {
  try { localStorage.setItem(name, value); } catch { /* no storage: it lasts as long as the page */ }
}
function kept(name) {
  try { return localStorage.getItem(name); } catch { return null; }
}
function tell(page) {
  back.hidden = depth < 1;
  again.hidden = !way.length;
  toRecord.hidden = page === record;
  if (toStart) toStart.hidden = !trees.treeOf(page);
  sofar.open = false;
  const left = page.dataset.left, ahead = left && +left.split(' ').pop() || +(left || '0').split(' ')[0];
  sofarHead.textContent = '';
  make('b', way.length || left ? way.length + ' done' : 'Menu', '', sofarHead);
  if (left) { sofarHead.append(' '); make('span', left + ' to go', '', sofarHead); }
  bar.style.setProperty('--p', left ? 100 * way.length / (way.length + ahead) + '%' : '100%');
}
// made only when it is opened, so that a tap on a way takes no longer after fifty steps
sofar.ontoggle = () => {
  walked.textContent = '';
  if (!sofar.open) return;
  way.forEach(taken => {
    const words = taken.number + ' ' + taken.title + ': ' + share.answer(taken), page = walk.pageOf(taken);
    if (page) button(words, make('li', '', '', walked), () => { go(page.id); });
    else make('li', words, '', walked);
  });
};

// -- a record goes on where it was left, in this tree or in the file of another
function onward(address, carried) {
  const to = address.split('~')[0];
  return to + (to.indexOf('#') < 0 ? '#:start' : '') + walk.tail(carried);
}
function goOn(found, read) {
  const now = found.now, page = walk.pageOf(now);
  if (read || page) go(read ? ':record' : page.id, walk.open(found));
  else location.href = onward((now.file || found.packs[now.pack].file) + '#' + now.step, found);
}
const write = recordPage(record, {
  go: (id, next) => { if (!next) walk.at(); go(id, next || []); },
  onward: goOn,
  changed: note
});
resume(doc.getElementById(':start'), goOn, history.state && history.state.r);

// -- the light: the style finds the choice with :has, which is slow in a long page; here a class on the root says it instead
function plain(rules) {
  [].forEach.call(rules, rule => {
    if (rule.cssRules && rule.cssRules.length) plain(rule.cssRules);
    else if (rule.selectorText) rule.selectorText = rule.selectorText.replace(/:has\(#\\:(\w+):checked\)/g, '.$1');
  });
}
function lighten() {
  const chosen = doc.querySelector('[name=light]:checked').value;
  ['day', 'night', 'dim'].forEach(light => { root.classList.toggle(light, light === chosen); });
  return chosen;
}
const light = doc.getElementById(':' + kept('rungbook-light'));
if (light) light.checked = true;
plain(doc.styleSheets[0].cssRules);
lighten();
addEventListener('change', e => {
  if (e.target.name === 'light') keep('rungbook-light', lighten());
});
useHand(kept('rungbook-hand') === 'left');
addEventListener('resize', () => { place(on); });
addEventListener('click', e => { if (!sofar.contains(e.target)) sofar.open = false; });

if (history.state && history.state.r) {
  way = walk.at(history.state.r, history.state.n);
  depth = history.state.d;
} else way = walk.arrive(here().closest('.page'));
note();
root.classList.add('live');
show();
