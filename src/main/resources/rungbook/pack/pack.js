// Shows one step at a time. Everything it needs is in the page; it loads nothing and keeps nothing elsewhere.
(function () {
'use strict';
const doc = document, root = doc.documentElement, main = doc.querySelector('main');
let way = [], typed = {}, depth = 0, job = '';
// the units that a reading may be typed in; one of them is 10^power of the step's own
const units = {
  V: [{ name: 'V', power: 0 }, { name: 'mV', power: -3 }],
  'Ω': [{ name: 'Ω', power: 0 }, { name: 'kΩ', power: 3 }, { name: 'MΩ', power: 6 }],
  A: [{ name: 'A', power: 0 }, { name: 'mA', power: -3 }],
  '°F': [{ name: '°F', power: 0 }, { name: '°C', power: 0 }]
};

function make(tag, words, kind, inside) {
  const element = doc.createElement(tag);
  if (words) element.textContent = words;
  if (kind) element.className = kind;
  if (inside) inside.appendChild(element);
  return element;
}
function button(words, inside, act) {
  const b = make('button', words, '', inside);
  b.type = 'button';
  b.onclick = act;
  return b;
}
function ways(page) {
  return [].slice.call(page.querySelectorAll('.ways a'));
}
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
  return target && target.closest('.page') ? target : doc.getElementById(':start');
}
function show() {
  const at = here(), page = at.closest('.page'), on = main.querySelector('.page.on');
  if (on) on.classList.remove('on');
  page.classList.add('on');
  root.classList.toggle('first', page.id === ':start');
  if (page.dataset.r && !page.querySelector('.reading')) reading(page);
  if (page === record) write();
  tell(page);
  if (at === page) scrollTo(0, 0); else at.scrollIntoView();
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

// -- a typed reading as {number, fraction, unit}, or as words that say what is wrong with it
function parse(text, list, unit) {
  const match = /^([-+\u2212]?)\s*(\d{0,9})(?:[.,](\d{0,6}))?\s*([a-z\u00b5\u03bc\u03a9\u2126\u00b0"][^\d]*)?$/i.exec(text);
  // three digits after a comma are a thousand to some and a fraction to others
  if (!match || !(match[2] || match[3]) || /,\d{3}(?!\d)/.test(text)) return 'Type one number, as the display shows it: 24.5';
  const named = match[4] && list.find(function (one) { return sameUnit(key(match[4]), key(one.name)); });
  if (match[4] && !named) return 'This step is read in ' + list[0].name + '.';
  return { minus: /[-\u2212]/.test(match[1]), whole: match[2], fraction: match[3] || '', unit: named || unit };
}
// a unit in one spelling: uF for \u00b5F and MFD, k for kohm, V for volts and VAC
function key(unit) {
  return unit.replace(/[\s.\u00b0]/g, '').replace(/[\u00b5\u03bc]/g, 'u').replace(/ohms?|[\u03a9\u2126]/i, '')
    .replace(/^([mk]?[va])(olts?|mps?|ac|dc)+$/i, '$1').replace(/^mfd$/i, 'uF').replace(/^("|in)(wc)?$/i, 'inwc');
}
// milli and mega differ by their case alone
function sameUnit(one, other) {
  return one.toLowerCase() === other.toLowerCase() && (one[0] === other[0] || !/^m/i.test(one));
}
// as a number of the meter's last digits (see Routing); exact, since every number here is an integer
function count(read, step, places) {
  let decimals = read.fraction.length, n = +(read.whole + read.fraction) * (read.minus ? -1 : 1);
  if (read.unit.name === '°C') { n = n * 18 + 320 * Math.pow(10, decimals); decimals++; }
  decimals -= read.unit.power;
  const by = Math.pow(10, Math.max(0, places - decimals));
  const over = Math.pow(10, Math.max(0, decimals - places)) * step;
  // half a count is rounded away from zero, as the meter's display is
  const twice = 2 * Math.abs(n * by) + over;
  return (n < 0 ? -1 : 1) * (twice - twice % (2 * over)) / (2 * over);
}
// a zone is [from, meaning, ways and the limit between them]; the names of OL and unsteady are no numbers
function zoneOf(counts, zones) {
  return zones.reduce(function (zone, next) { return next[0] <= counts ? next : zone; });
}
// what is said of a reading, by what it means (see Meaning)
const says = {
  in: '{}: as it should be here ({window}).',
  out: '{}: not as it should be ({window}).',
  near: '{} is as good as {limit} for this meter. Hold the leads on for 10 seconds and read again.',
  still: '{} is again as good as {limit}. This meter cannot tell these two ways apart.',
  none: '{}: no way on takes this reading. Read again, then ask.',
  minus: '{}: a minus sign here means a wrong setting, a wrong zero or swapped leads. Correct it and read again.',
  off: 'This meter cannot show {} here. Check the unit and read again.',
  cannot: '{} cannot be at these points. Check the meter’s setting and both leads, and read again.',
  high: '{} is more than this meter may read. Take the {leads} off.',
  danger: '{}: line voltage on a control wire.\nHands out.\nShut off power.\nDo not go on.\nCall for help.'
};
function reading(page) {
  const zones = page.dataset.r.split(';').map(function (zone) { return zone.split(','); }), digits = zones.shift();
  const own = page.dataset.u, list = units[own] || [{ name: own, power: 0 }], on = page.querySelector('.ways');
  const box = make('div', '', 'reading'), two = make('div', '', 'two', box);
  const field = make('label', 'Reading in ' + own, 'field', two), input = make('input', '', '', field);
  let unit = 0, near = '', first = '';
  input.inputMode = +digits[2] ? 'text' : 'decimal';
  input.autocomplete = 'off';
  input.enterKeyHint = 'go';
  const told = make('div', '', 'told');
  told.setAttribute('role', 'status');
  function named(name) {
    return zones.find(function (zone) { return zone[0] === name; });
  }
  function instead(words, name) {
    input.value = '';
    answer(words, named(name));
  }
  function say(words, kind) {
    told.textContent = '';
    told.className = 'told ' + kind;
    if (kind === 'danger') make('h3', 'DANGER', '', told);
    if (words) make('p', words, '', told);
  }
  function answer(words, zone) {
    const meaning = zone && (zone[1] === 'near' && first ? 'still' : zone[1]);
    const taken = zone ? zone.slice(2, 4) : [];
    near = meaning === 'near' ? words : '';
    typed[page.id] = (first && words ? first + ', again ' : '') + words;
    on.className = 'ways' + (zone ? ' told-of ' + meaning : '');
    ways(page).forEach(function (link, index) {
      link.classList.toggle('points', meaning !== 'near' && taken.indexOf(String(index)) >= 0);
      link.classList.toggle('beside', meaning === 'near' && taken.indexOf(String(index)) >= 0);
    });
    say(zone ? says[meaning].replace('{}', words).replace('{limit}', zone[4]).replace('{leads}', own === 'A' ? 'jaw' : 'leads')
      .replace('{window}', page.querySelector('.window').textContent) : '', meaning || '');
    if (near) button('Read again', told, again);
    if (meaning === 'danger') box.scrollIntoView();
  }
  function again() {
    input.value = '';
    read();
    input.focus();
  }
  function read() {
    const value = input.value.trim(), parsed = parse(value, list, list[unit]);
    if (!value) {
      first = near || first;
      answer('');
      if (first) say('First reading: ' + first, '');
    } else if (/^[o0]\.?\s*l\.?$/i.test(value)) answer('OL', named('OL'));
    else if (parsed.unit) {
      answer((parsed.minus ? '−' : '') + (parsed.whole || '0') + (parsed.fraction && '.' + parsed.fraction) + ' ' + parsed.unit.name,
        zoneOf(count(parsed, +digits[0], +digits[1]), zones));
    } else { answer(''); say(parsed, ''); }
  }
  input.oninput = read;
  // the answer has to fit between the field and the phone's keyboard
  input.onfocus = function () { box.scrollIntoView(); };
  input.onkeydown = function (e) {
    const to = page.querySelectorAll('.points');
    if (e.key === 'Enter' && near) again();
    else if (e.key === 'Enter' && to.length === 1) to[0].click();
  };
  const change = list.length > 1 && button('Unit: ' + own, two, function () {
    unit = (unit + 1) % list.length;
    change.textContent = 'Unit: ' + list[unit].name;
    read();
  });
  if (change) field.firstChild.data = 'Reading';
  button('OL', two, function () { instead('OL', 'OL'); }).setAttribute('aria-label', 'OL: the display shows overload');
  box.appendChild(told);
  if (named('unsteady')) button('No steady reading', box, function () { instead('No steady reading', 'unsteady'); });
  page.insertBefore(box, on);
}

// -- under each step: back, the way so far, the record
const tools = make('div', '', 'tools', doc.body), record = make('section', '', 'page record', main);
doc.body.insertBefore(tools, doc.querySelector('footer'));
record.id = ':record';
const back = button('← Back', tools, function () { history.back(); });
const sofar = make('details', '', '', tools), sofarHead = make('summary', '', '', sofar);
const walked = make('ol', '', 'walked', sofar);
const toRecord = button('Field record: share or keep it', tools, function () { go(':record'); });
const again = button('Start again, with an empty record', tools, function () { typed = {}; go(':start', []); });
button('Whole procedure, or one step at a time', tools, function () { root.classList.toggle('live'); show(); });
function linkOf(taken) {
  return ways(doc.getElementById(taken.page) || tools)[taken.way];
}
function answerOf(taken) {
  const lines = linkOf(taken).querySelectorAll('u');
  return (taken.reading ? taken.reading + ', ' : '') + 'way “' + [].map.call(lines, function (u) { return u.textContent; }).join(', ') + '”';
}
function tell(page) {
  back.hidden = depth < 1;
  sofar.hidden = toRecord.hidden = again.hidden = !way.length;
  sofar.open = false;
  sofarHead.textContent = 'The way so far: ' + way.length + (way.length === 1 ? ' step' : ' steps');
  toRecord.hidden = toRecord.hidden || page === record;
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
const keep = make('div', '', 'tools', record);
if (navigator.share) button('Share', keep, function () { navigator.share({ title: doc.title, text: recordText() }).catch(function () {}); });
button('Copy', keep, function () {
  getSelection().selectAllChildren(pre);
  said.textContent = doc.execCommand('copy') ? 'Copied.' : 'Selected: now copy it with the phone’s own menu.';
});
button('Save as a text file', keep, function () {
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
  const on = doc.querySelector('.light input:checked').value;
  ['day', 'night', 'dim'].forEach(function (light) { root.classList.toggle(light, light === on); });
  return on;
}
try {
  const light = doc.getElementById(':' + localStorage.getItem('rungbook-light'));
  if (light) light.checked = true;
} catch { /* no storage: the choice lasts as long as the page */ }
plain(doc.styleSheets[0].cssRules);
lighten();
doc.querySelector('.light').onchange = function () {
  const on = lighten();
  try { localStorage.setItem('rungbook-light', on); } catch { /* as above */ }
};

if (history.state && history.state.w && history.state.w.every(linkOf)) {
  way = history.state.w;
  depth = history.state.d;
} else {
  try { history.replaceState({ w: way, d: 0 }, ''); } catch { /* kept in the page alone */ }
}
root.classList.add('live');
show();
})();
