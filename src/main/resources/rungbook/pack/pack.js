// Shows one step at a time. Everything it needs is in the page; it loads nothing and keeps nothing elsewhere.
(function () {
'use strict';
const doc = document, root = doc.documentElement, main = doc.querySelector('main');
let way = [], typed = {}, depth = 0, job = '';
const make = window.rungbook.make, button = window.rungbook.button, ways = window.rungbook.ways;

function heading(page) {
  const h = page.querySelector('h2');
  return h ? h.textContent.trim() : 'Start';
}

// -- the current step; the way so far is kept in the browser's history, so that the phone's own Back works and a reload
// loses nothing. Each entry of the way: {page, way, reading, at}: the step's id, the index of its way, what was typed, when
function go(id, next) {
  way = next || way;
  depth++;
  try { history.pushState({ w: way, d: depth }, '', '#' + encodeURIComponent(id)); } catch { location.hash = encodeURIComponent(id); }
  show();
}
function here() {
  let id = location.hash.slice(1);
  try { id = decodeURIComponent(id); } catch { /* shown as the start */ }
  const target = id && doc.getElementById(id);
  const page = target && target.closest('.page');
  // the heading of a fragment is at the top of its first step
  return page && target.classList.contains('taken') ? page : page ? target : doc.getElementById(':start');
}
function show() {
  const at = here(), page = at.closest('.page'), on = main.querySelector('.page.on');
  if (on) on.classList.remove('on');
  page.classList.add('on');
  root.classList.toggle('first', page.id === ':start');
  if (page !== on) window.rungbook.step(page, way, function (words) { typed[page.id] = words; });
  if (page === record) write();
  tell(page);
  scrollTo(0, 0);
  window.rungbook.place(page);
  if (at !== page) at.scrollIntoView();
  const h = page.querySelector('h2');
  if (h) { h.tabIndex = -1; h.focus({ preventScroll: true }); }
}
addEventListener('popstate', function (e) {
  if (e.state) { way = e.state.w; depth = e.state.d; }
  show();
});
addEventListener('click', function (e) {
  const a = e.target.closest && e.target.closest('a[href]'), page = a && a.closest('.page');
  const to = a && a.getAttribute('href');
  if (!a || e.defaultPrevented || !root.classList.contains('live')) return;
  const index = page ? ways(page).indexOf(a) : -1;
  const next = index < 0 || page.id === ':start' ? way
    : way.concat({ page: page.id, way: index, reading: typed[page.id] || '', at: Date.now() });
  if (to[0] === '#') {
    e.preventDefault();
    go(decodeURIComponent(to.slice(1)), next);
  } else if (next !== way) {
    way = next;
    try { history.replaceState({ w: way, d: depth }, ''); } catch { /* kept in the page alone */ }
  }
});

// -- above each step: back, the way so far, and behind it what is seldom needed
const bar = doc.querySelector('.bar'), record = make('section', '', 'page record', main);
record.id = ':record';
const back = button('', bar, function () { history.back(); });
back.className = 'back';
back.setAttribute('aria-label', 'Back');
const sofar = make('details', '', 'sofar', bar), sofarHead = make('summary', '', '', sofar), menu = make('div', '', 'menu', sofar);
const walked = make('ol', '', 'walked', menu), tools = make('div', '', 'tools', menu);
bar.insertBefore(back, bar.firstChild);
bar.insertBefore(sofar, back.nextSibling);
const toRecord = button('Field record: share or keep it', tools, function () { go(':record'); });
button('Start page', tools, function () { go(':start'); });
button('Whole procedure, or one step at a time', tools, function () { root.classList.toggle('live'); sofar.open = false; show(); });
const hand = button('', tools, function () { useHand(!root.classList.contains('left')); });
const again = button('Start again, with an empty record', tools, function () { typed = {}; go(':start', []); });
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
function linkOf(taken) {
  return ways(doc.getElementById(taken.page) || tools)[taken.way];
}
function answerOf(taken) {
  const lines = linkOf(taken).querySelectorAll('u');
  return (taken.reading ? taken.reading + ', ' : '') + 'way “' + [].map.call(lines, function (u) { return u.textContent; }).join(', ') + '”';
}
function tell(page) {
  back.hidden = depth < 1;
  toRecord.hidden = again.hidden = !way.length;
  toRecord.hidden = toRecord.hidden || page === record;
  sofar.open = false;
  const left = page.dataset.left, ahead = left && +left.split(' ').pop() || +(left || '0').split(' ')[0];
  sofarHead.textContent = '';
  make('b', way.length || left ? way.length + ' done' : 'Menu', '', sofarHead);
  if (left) { sofarHead.append(' '); make('span', left + ' to go', '', sofarHead); }
  bar.style.setProperty('--p', left ? 100 * way.length / (way.length + ahead) + '%' : '100%');
}
// made only when it is opened, so that a tap on a way takes no longer after fifty steps
sofar.ontoggle = function () {
  walked.textContent = '';
  if (!sofar.open) return;
  way.forEach(function (taken) {
    const words = heading(doc.getElementById(taken.page)) + ': ' + answerOf(taken);
    button(words, make('li', '', '', walked), function () { go(taken.page); });
  });
};

// -- the field record, as text that any phone can pass on
function time(ms) {
  return new Date(ms).toLocaleString('en-US', { dateStyle: 'long', timeStyle: 'short' });
}
function concluded(page) {
  const box = page && page.querySelector('.concluded');
  return box ? [box.innerText.trim()] : [];
}
function recordText() {
  const end = way.length && way[way.length - 1], to = end && linkOf(end);
  const last = to && to.getAttribute('href')[0] === '#' && doc.getElementById(decodeURIComponent(to.hash.slice(1)));
  return ['FIELD RECORD', doc.title, 'Pack: ' + doc.body.dataset.file + ', digest ' + doc.querySelector('.digest').textContent]
    .concat(job ? ['Job: ' + job] : [], way.length ? ['Started: ' + time(way[0].at)] : [], '',
      [].concat.apply([], way.map(function (w) {
        const page = doc.getElementById(w.page);
        return ['Step ' + heading(page) + ': ' + answerOf(w)].concat(concluded(page));
      })),
      last ? ['Now at step ' + heading(last)] : to ? ['On to: ' + to.getAttribute('href')] : [],
      concluded(last),
      way.length ? ['Last step: ' + time(end.at)] : []).join('\n') + '\n';
}
function write() {
  pre.textContent = recordText();
}
make('h2', 'Field record', '', record);
const note = make('input', '', '', make('label', 'Job, unit or address', 'field', record));
note.oninput = function () { job = note.value; write(); };
const pre = make('pre', '', '', record), said = make('p', '', 'told');
pre.tabIndex = 0;
pre.setAttribute('aria-label', 'The record');
pre.setAttribute('role', 'region');
said.setAttribute('role', 'status');
const out = make('div', '', 'tools', record);
if (navigator.share) button('Share', out, function () { navigator.share({ title: doc.title, text: recordText() }).catch(function () {}); });
button('Copy', out, function () {
  getSelection().selectAllChildren(pre);
  said.textContent = doc.execCommand('copy') ? 'Copied.' : 'Selected: now copy it with the phone’s own menu.';
});
button('Save as a text file', out, function () {
  const a = make('a');
  a.href = URL.createObjectURL(new Blob([recordText()], { type: 'text/plain' }));
  a.download = doc.body.dataset.file.replace(/\.html$/, '') + '-record.txt';
  a.click();
});
record.appendChild(said);

// -- the light: the style finds the choice with :has, which is slow in a long page; here a class on the root says it instead
function plain(rules) {
  [].forEach.call(rules, function (rule) {
    if (rule.cssRules && rule.cssRules.length) plain(rule.cssRules);
    else if (rule.selectorText) rule.selectorText = rule.selectorText.replace(/:has\(#\\:(\w+):checked\)/g, '.$1');
  });
}
function lighten() {
  const on = doc.querySelector('[name=light]:checked').value;
  ['day', 'night', 'dim'].forEach(function (light) { root.classList.toggle(light, light === on); });
  return on;
}
const light = doc.getElementById(':' + kept('rungbook-light'));
if (light) light.checked = true;
plain(doc.styleSheets[0].cssRules);
lighten();
addEventListener('change', function (e) {
  if (e.target.name === 'light') keep('rungbook-light', lighten());
});
useHand(kept('rungbook-hand') === 'left');
addEventListener('resize', function () { window.rungbook.place(main.querySelector('.page.on')); });
addEventListener('click', function (e) { if (!sofar.contains(e.target)) sofar.open = false; });

if (history.state && history.state.w && history.state.w.every(linkOf)) {
  way = history.state.w;
  depth = history.state.d;
} else {
  try { history.replaceState({ w: way, d: 0 }, ''); } catch { /* kept in the page alone */ }
}
root.classList.add('live');
show();
})();
