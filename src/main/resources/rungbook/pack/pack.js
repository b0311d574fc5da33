// Narrows the page to one step at a time. Everything it needs stands in the page; nothing is asked for or kept elsewhere.
(function () {
'use strict';
var doc = document, root = doc.documentElement, main = doc.querySelector('main');
var way = [], typed = {}, depth = 0, job = '';
// what is read in other units: [name, tenfold shift]
var units = { V: [['V', 0], ['mV', -3]], 'Ω': [['Ω', 0], ['kΩ', 3], ['MΩ', 6]], A: [['A', 0], ['mA', -3]], '°F': [['°F', 0], ['°C', 0]] };

function make(tag, words, kind, inside) {
  var e = doc.createElement(tag);
  if (words) e.textContent = words;
  if (kind) e.className = kind;
  if (inside) inside.appendChild(e);
  return e;
}
function button(words, inside, act) {
  var b = make('button', words, '', inside);
  b.type = 'button';
  b.onclick = act;
  return b;
}
function ways(page) {
  return [].slice.call(page.querySelectorAll('.ways a'));
}
function heading(page) {
  var h = page.querySelector('h2');
  return h ? h.textContent.trim() : 'Start';
}

// -- where we are; the way walked travels in the history, so the phone's own Back works and a reload forgets nothing
function go(id, next) {
  way = next || way;
  depth++;
  try { history.pushState({ w: way, d: depth }, '', '#' + encodeURIComponent(id)); } catch (e) { location.hash = encodeURIComponent(id); }
  show();
}
function here() {
  var id = location.hash.slice(1), e;
  try { id = decodeURIComponent(id); } catch (e) { /* shown as the start */ }
  e = id && doc.getElementById(id);
  return e && e.closest('.page') ? e : doc.getElementById(':start');
}
function show() {
  var at = here(), page = at.closest('.page'), on = main.querySelector('.page.on');
  if (on) on.classList.remove('on');
  page.classList.add('on');
  root.classList.toggle('first', page.id === ':start');
  if (page.dataset.r && !page.querySelector('.reading')) reading(page);
  if (page === record) write();
  tell(page);
  if (at === page) scrollTo(0, 0); else at.scrollIntoView();
  var h = page.querySelector('h2');
  if (h) { h.tabIndex = -1; h.focus({ preventScroll: true }); }
}
addEventListener('popstate', function (e) {
  if (e.state) { way = e.state.w; depth = e.state.d; }
  show();
});
addEventListener('click', function (e) {
  var a = e.target.closest && e.target.closest('a[href]'), page = a && a.closest('.page'), to = a && a.getAttribute('href');
  if (!a || e.defaultPrevented || !root.classList.contains('live')) return;
  var index = page ? ways(page).indexOf(a.original || a) : -1;
  var next = index < 0 || page.id === ':start' ? way : way.concat([[page.id, index, typed[page.id] || '', Date.now()]]);
  if (to[0] === '#') {
    e.preventDefault();
    go(decodeURIComponent(to.slice(1)), next);
  } else if (next !== way) {
    way = next;
    try { history.replaceState({ w: way, d: depth }, ''); } catch (e) { /* kept in the page alone */ }
  }
});

// -- a typed reading, in whole counts of the meter's last digit; exact, since every number here is a whole one
function count(text, unit, r) {
  var m = /^([-\u2212]?)(\d{0,9})(?:[.,](\d{0,6}))?$/.exec(text.trim().replace(/\s/g, ''));
  if (!m || !(m[2] || m[3]) || /^[^.]*,\d{3}$/.test(text)) return NaN;
  var decimals = (m[3] || '').length, n = +(m[2] + (m[3] || '')) * (m[1] ? -1 : 1);
  if (unit[0] === '°C') { n = n * 18 + 320 * Math.pow(10, decimals); decimals++; }
  decimals -= unit[1];
  var by = Math.pow(10, Math.max(0, r[1] - decimals)), over = Math.pow(10, Math.max(0, decimals - r[1])) * r[0];
  // half a count is rounded away from zero, as the meter's display is
  var twice = 2 * Math.abs(n * by) + over;
  return (n < 0 ? -1 : 1) * (twice - twice % (2 * over)) / (2 * over);
}
function route(c, r) {
  if (c < r[2] || c > r[3]) return r[5];
  for (var i = 0; i < r[4].length; i++) if (r[4][i][1] <= c && c <= r[4][i][2]) return r[4][i][0];
  return r[7];
}
function reading(page) {
  var r = JSON.parse(page.dataset.r), own = page.dataset.u, box = make('div', '', 'reading'), two = make('div', '', '', box);
  var field = make('label', 'Your reading in ' + own, 'field', two), input = make('input', '', '', field);
  input.inputMode = r[2] < 0 ? 'text' : 'decimal';
  input.autocomplete = 'off';
  var list = units[own] || [[own, 0]], unit = 0;
  var change = list.length > 1 && button('Unit: ' + own, two, function () {
    unit = (unit + 1) % list.length;
    change.textContent = 'Unit: ' + list[unit][0];
    read();
  });
  if (change) {
    two.className = 'two';
    field.firstChild.data = 'Your reading';
  }
  var told = make('div', '', 'told');
  told.setAttribute('role', 'status');
  function answer(words, to) {
    typed[page.id] = words;
    told.textContent = '';
    page.querySelectorAll('.points').forEach(function (w) { w.classList.remove('points'); });
    if (!words) return;
    var on = ways(page)[to], copy;
    make('p', words + (on ? ' points this way:' : ': no way on takes this reading. Read again, then ask.'), '', told);
    if (on) {
      on.classList.add('points');
      copy = told.appendChild(on.cloneNode(true));
      copy.original = on;
      copy.classList.add('answered');
    }
  }
  function read() {
    var u = list[unit], text = input.value, c = count(text, u, r);
    if (!text.trim()) answer('', -1);
    else if (/^o\.?l\.?$/i.test(text.trim())) answer('OL', r[5]);
    else if (isNaN(c)) { answer('', -1); make('p', 'Type the number alone, with a point: 24.5', '', told); }
    else answer(text.trim() + ' ' + u[0], route(c, r));
  }
  input.oninput = read;
  box.appendChild(told);
  if (own === 'Ω' || own === 'µF') button('OL: the display shows overload', box, function () { input.value = ''; answer('OL', r[5]); });
  if (r[6] >= 0) button('No steady reading', box, function () { input.value = ''; answer('no steady reading', r[6]); });
  page.insertBefore(box, page.querySelector('.ways'));
}

// -- under each step: back, the way so far, the record
var tools = make('div', '', 'tools', doc.body), record = make('section', '', 'page record', main);
doc.body.insertBefore(tools, doc.querySelector('footer'));
record.id = ':record';
var back = button('← Back', tools, function () { history.back(); });
var far = make('details', '', '', tools), farHead = make('summary', '', '', far), walked = make('ol', '', 'walked', far);
var toRecord = button('Field record: share or keep it', tools, function () { go(':record'); });
var again = button('Start again, with an empty record', tools, function () { typed = {}; go(':start', []); });
button('Whole procedure, or one step at a time', tools, function () { root.classList.toggle('live'); show(); });
function answerOf(w) {
  var lines = ways(doc.getElementById(w[0]))[w[1]].querySelectorAll('u');
  return (w[2] ? w[2] + ', ' : '') + 'way “' + [].map.call(lines, function (u) { return u.textContent; }).join(', ') + '”';
}
function tell(page) {
  back.hidden = depth < 1;
  far.hidden = toRecord.hidden = again.hidden = !way.length;
  far.open = false;
  farHead.textContent = 'The way so far: ' + way.length + (way.length === 1 ? ' step' : ' steps');
  toRecord.hidden = toRecord.hidden || page === record;
}
// made only when it is looked at, so that a tap on a way costs the same after fifty steps
far.ontoggle = function () {
  walked.textContent = '';
  if (far.open) way.forEach(function (w) {
    button(heading(doc.getElementById(w[0])) + ': ' + answerOf(w), make('li', '', '', walked), function () { go(w[0]); });
  });
};

// -- the field record, as text that any phone can pass on
function time(ms) {
  return new Date(ms).toLocaleString('en-US', { dateStyle: 'long', timeStyle: 'short' });
}
function text() {
  var end = way.length && way[way.length - 1], to = end && ways(doc.getElementById(end[0]))[end[1]];
  var last = to && to.getAttribute('href')[0] === '#' && doc.getElementById(decodeURIComponent(to.hash.slice(1)));
  return ['FIELD RECORD', doc.title, 'Pack: ' + doc.body.dataset.file + ', digest ' + doc.querySelector('.digest').textContent]
    .concat(job ? ['Job: ' + job] : [], way.length ? ['Started: ' + time(way[0][3])] : [], '',
      way.map(function (w) { return 'Step ' + heading(doc.getElementById(w[0])) + ': ' + answerOf(w); }),
      last ? ['Now at step ' + heading(last)] : to ? ['On to: ' + to.getAttribute('href')] : [],
      last && last.querySelector('.concluded') ? [last.querySelector('.concluded').innerText.trim()] : [],
      way.length ? ['Last step: ' + time(end[3])] : []).join('\n') + '\n';
}
function write() {
  pre.textContent = text();
}
make('h2', 'Field record', '', record);
var note = make('input', '', '', make('label', 'Job, unit or address', 'field', record));
note.oninput = function () { job = note.value; write(); };
var pre = make('pre', '', '', record), said = make('p', '', 'told');
pre.tabIndex = 0;
pre.setAttribute('aria-label', 'The record');
pre.setAttribute('role', 'region');
said.setAttribute('role', 'status');
var keep = make('div', '', 'tools', record);
if (navigator.share) button('Share', keep, function () { navigator.share({ title: doc.title, text: text() }).catch(function () {}); });
button('Copy', keep, function () {
  getSelection().selectAllChildren(pre);
  said.textContent = doc.execCommand('copy') ? 'Copied.' : 'Selected: now copy it with the phone’s own menu.';
});
button('Save as a text file', keep, function () {
  var a = make('a');
  a.href = URL.createObjectURL(new Blob([text()], { type: 'text/plain' }));
  a.download = doc.body.dataset.file.replace(/\.html$/, '') + '-record.txt';
  a.click();
});
record.appendChild(said);

// -- the light: the style asks which choice is on, which is slow in a long page, so here the root's class says it instead
function plain(rules) {
  [].forEach.call(rules, function (rule) {
    if (rule.cssRules && rule.cssRules.length) plain(rule.cssRules);
    else if (rule.selectorText) rule.selectorText = rule.selectorText.replace(/:has\(#\\:(\w+):checked\)/g, '.$1');
  });
}
function lighten() {
  var on = doc.querySelector('.light input:checked').value;
  ['day', 'night', 'dim'].forEach(function (light) { root.classList.toggle(light, light === on); });
  return on;
}
try {
  var light = doc.getElementById(':' + localStorage.getItem('rungbook-light'));
  if (light) light.checked = true;
} catch (e) { /* no storage: the choice lasts as long as the page */ }
plain(doc.styleSheets[0].cssRules);
lighten();
doc.querySelector('.light').onchange = function () {
  var on = lighten();
  try { localStorage.setItem('rungbook-light', on); } catch (e) { /* as above */ }
};

if (history.state && history.state.w && history.state.w.every(function (w) { return ways(doc.getElementById(w[0]) || tools)[w[1]]; })) {
  way = history.state.w;
  depth = history.state.d;
} else try { history.replaceState({ w: way, d: 0 }, ''); } catch (e) { /* the page's own memory serves */ }
root.classList.add('live');
show();
})();
