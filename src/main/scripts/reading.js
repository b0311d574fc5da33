// The field for a reading, with keys of its own that fit gloves, and what a reading means.
import { button, buzz, make, ways } from './parts.js';

// the units that a reading may be typed in; one of them is 10^power of the step's own
const units = {
  V: [{ name: 'V', power: 0 }, { name: 'mV', power: -3 }],
  'Ω': [{ name: 'Ω', power: 0 }, { name: 'kΩ', power: 3 }, { name: 'MΩ', power: 6 }],
  A: [{ name: 'A', power: 0 }, { name: 'mA', power: -3 }],
  '°F': [{ name: '°F', power: 0 }, { name: '°C', power: 0 }]
};

// -- a typed reading as {number, fraction, unit}, or as words that say what is wrong with it
function parse(text, list, unit) {
  const match = /^([-+\u2212]?)\s*(\d{0,9})(?:[.,](\d{0,6}))?\s*([a-z\u00b5\u03bc\u03a9\u2126\u00b0"][^\d]*)?$/i.exec(text);
  // three digits after a comma are a thousand to some and a fraction to others
  if (!match || !(match[2] || match[3]) || /,\d{3}(?!\d)/.test(text)) return 'Type one number, as the display shows it: 24.5';
  const named = match[4] && list.find(one => sameUnit(key(match[4]), key(one.name)));
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
  return zones.reduce((zone, next) => next[0] <= counts ? next : zone);
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
// the keys from left to right; a key for the unit comes last where there are two units
const keys = ['7', '8', '9', '⌫', '4', '5', '6', 'OL', '1', '2', '3', 'jumps', '−', '0', '.'];
const names = { '⌫': 'Delete the last digit', OL: 'OL: the display shows overload', jumps: 'The reading jumps', '−': 'Minus', '.': 'Point' };

// typed(words, first) is told each reading, and the first one where it had to be read again; moved(box) that the dock has
// another height, and what to show in it
export function reading(page, dock, typed, moved) {
  const zones = page.dataset.r.split(';').map(zone => zone.split(',')), digits = zones.shift();
  const own = page.dataset.u, list = units[own] || [{ name: own, power: 0 }], on = page.querySelector('.ways');
  const box = make('div', '', 'reading'), two = make('div', '', 'two', box);
  const field = make('label', 'Reading in ' + own, 'field', two), input = make('input', '', '', field);
  let unit = 0, near = '', first = '';
  input.inputMode = 'none';
  input.autocomplete = 'off';
  input.enterKeyHint = 'go';
  const told = make('div', '', 'told', box), pad = make('div', '', 'pad', box);
  told.setAttribute('role', 'status');
  pad.setAttribute('role', 'group');
  pad.setAttribute('aria-label', 'Keys');
  pad.hidden = true;
  const close = button('▾', two, () => { open(false); });
  close.setAttribute('aria-label', 'Hide the keys');
  close.hidden = true;
  function open(shown) {
    pad.hidden = close.hidden = !shown;
    dock.classList.toggle('typing', shown);
    moved();
  }
  function named(name) {
    return zones.find(zone => zone[0] === name);
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
    typed(words, first);
    on.classList.remove('told-of', 'in', 'danger');
    if (zone) on.classList.add('told-of', meaning);
    ways(page).forEach((link, index) => {
      link.classList.toggle('points', meaning !== 'near' && taken.indexOf(String(index)) >= 0);
      link.classList.toggle('beside', meaning === 'near' && taken.indexOf(String(index)) >= 0);
    });
    say(zone ? says[meaning].replace('{}', words).replace('{limit}', zone[4]).replace('{leads}', own === 'A' ? 'jaw' : 'leads')
      .replace('{window}', page.querySelector('.window').textContent) : '', meaning || '');
    if (near) button('Read again', told, again);
    const stop = meaning === 'danger' || meaning === 'high';
    if (stop) { buzz([600, 120, 600]); open(false); } else if (taken.length) buzz(12);
    moved(stop && box);
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
    } else if (/^[-−]$/.test(value)) minus();
    else if (/^[o0]\.?\s*l\.?$/i.test(value)) answer('OL', named('OL'));
    else if (parsed.unit) {
      answer((parsed.minus ? '−' : '') + (parsed.whole || '0') + (parsed.fraction && '.' + parsed.fraction) + ' ' + parsed.unit.name,
        zoneOf(count(parsed, +digits[0], +digits[1]), zones));
    } else { answer(''); say(parsed, ''); }
  }
  // a scale that starts at zero refuses the sign before any digit
  function minus() {
    answer('');
    if (!+digits[2]) say(says.minus.replace('{}', '−'), 'minus');
  }
  function jumps() {
    if (named('unsteady')) instead('No steady reading', 'unsteady');
    else { instead('', ''); say('No way on takes a reading that jumps. Press the tips on bare metal and read again, then ask.', 'none'); }
  }
  function press(cap) {
    const value = input.value;
    if (cap === 'OL') instead('OL', 'OL');
    else if (cap === 'jumps') jumps();
    else {
      input.value = cap === '⌫' ? value.slice(0, -1) : cap !== '−' ? value + cap : value[0] === '−' ? value.slice(1) : '−' + value;
      read();
    }
  }
  keys.forEach((cap, index) => {
    const b = button(cap, pad, () => { press(cap); });
    b.className = 'k' + (index % 4);
    if (names[cap]) b.setAttribute('aria-label', names[cap]);
  });
  const change = list.length > 1 && button('Unit: ' + own, pad, () => {
    unit = (unit + 1) % list.length;
    change.textContent = 'Unit: ' + list[unit].name;
    read();
  });
  if (change) { field.firstChild.data = 'Reading'; change.className = 'k3'; }
  input.oninput = read;
  input.onfocus = () => { open(true); };
  input.onkeydown = e => {
    const to = page.querySelectorAll('.points');
    if (e.key === 'Enter' && near) again();
    else if (e.key === 'Enter' && to.length === 1) to[0].click();
  };
  dock.insertBefore(box, on);
};
