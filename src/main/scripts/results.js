// What was practiced, kept on the phone where it keeps anything, and on its way to a teacher.
import { button, make } from './parts.js';
import { qr } from './qr.js';

const FORMAT = 'rungbook-practice/1', KEY = 'rungbook-practice-', PART = 400;

function dark(row, y) {
  return row.map((is, x) => is ? 'M' + (x + 4) + ' ' + (y + 4) + 'h1v1h-1z' : '').join('');
}
export function qrPicture(text, words, inside) {
  const rows = qr(text), side = rows.length + 8, box = make('div', '', 'qr', inside);
  box.innerHTML = '<svg width="' + side * Math.max(2, Math.floor(Math.min(innerWidth - 40, 480) / side)) + '" viewBox="0 0 ' + side + ' ' + side
    + '" role="img"><rect width="100%" height="100%" fill="#fff"/><path d="' + rows.map(dark).join('') + '"/></svg>';
  box.firstChild.setAttribute('aria-label', 'QR code: ' + words);
}
// system and digest name the page that was practiced on
export function results(system, digest) {
  let all = { format: FORMAT, system: system, digest: digest, name: '', rounds: [] };
  try {
    const before = JSON.parse(localStorage.getItem(KEY + system));
    if (before && before.format === FORMAT && Array.isArray(before.rounds)) all = before;
  } catch { /* no storage: the results last as long as the page */ }
  function keep() {
    all.digest = digest;
    try { localStorage.setItem(KEY + system, JSON.stringify(all)); } catch { /* the same */ }
  }
  function sum(field) {
    return all.rounds.reduce((total, r) => total + r[field], 0);
  }
  function words() {
    return ['PRACTICE, ' + system + (all.name ? ', ' + all.name : '')].concat(all.rounds.map((r, i) => {
      return (i + 1) + '. Level ' + r.level + (r.exercise ? ', exercise ' + r.exercise : '') + ': ' + (r.right ? 'found' : 'not found') + ', '
        + r.faults.join(' and ') + (r.right ? '' : ' (named: ' + r.named.join(' and ') + ')') + ', ' + r.minutes + ' min of work, ' + r.walked
        + ' min of walking' + (r.unsafe.length ? '\n    UNSAFE: ' + r.unsafe.join('\n    UNSAFE: ') : '');
    }), [all.rounds.filter(r => r.right).length + ' of ' + all.rounds.length + ' found, ' + sum('minutes') + ' min of work, '
      + sum('walked') + ' min of walking']).join('\n') + '\n';
  }
  function text() { return words() + '\n' + JSON.stringify(all) + '\n'; }
  // letters that every QR reader shows alike
  function short() {
    return JSON.stringify({ f: FORMAT, s: system, d: digest.slice(0, 24), n: all.name, r: all.rounds.map(r => {
      return [r.level, r.exercise || '', r.faults, r.right ? [] : r.named, r.minutes, r.walked, r.unsafe.length];
    }) }).replace(/[^\x20-\x7e]/g, c => '\\u' + (c.charCodeAt(0) + 65536).toString(16).slice(1));
  }
  function pictures(inside) {
    const whole = short(), count = Math.ceil(whole.length / PART), size = Math.ceil(whole.length / count);
    inside.textContent = '';
    for (let i = 0; i < count; i++) {
      const title = 'Picture ' + (i + 1) + ' of ' + count;
      make('h3', title, '', inside);
      qrPicture('RUNGBOOK ' + (i + 1) + '/' + count + ' practice:' + whole.slice(i * size, (i + 1) * size), title, inside);
    }
  }
  return {
    all: all,
    add: round => { all.rounds.push(round); keep(); },
    // the list with its ways out
    show: function (inside) {
      if (!all.rounds.length) return;
      make('h2', 'Your results', '', inside);
      const box = make('input', '', '', make('label', 'Your name, for your teacher', 'field', inside)), pre = make('pre', words(), '', inside);
      box.value = all.name;
      box.oninput = () => { all.name = box.value; keep(); pre.textContent = words(); };
      pre.tabIndex = 0;
      pre.setAttribute('role', 'region');
      pre.setAttribute('aria-label', 'Results');
      const tools = make('div', '', 'tools', inside), told = make('p', '', 'told', inside), panel = make('div', '', '', inside);
      told.setAttribute('role', 'status');
      if (navigator.share) button('Share', tools, () => { navigator.share({ title: 'Practice', text: text() }).then(null, () => {}); });
      button('Save as a file', tools, () => {
        const a = make('a');
        a.href = URL.createObjectURL(new Blob([text()], { type: 'text/plain' }));
        a.download = 'practice-' + system + '.txt';
        a.click();
        told.textContent = 'Saved with the downloads.';
      });
      button('Copy', tools, () => {
        pre.textContent = text();
        getSelection().selectAllChildren(pre);
        told.textContent = document.execCommand('copy') ? 'Copied.' : 'Selected: now copy it.';
      });
      button('QR pictures', tools, () => { pictures(panel); panel.scrollIntoView(); });
      button('Delete the results', tools, function () {
        if (!this.dataset.sure) { this.dataset.sure = '1'; this.textContent = 'Delete them for good: press again'; return; }
        all.rounds.length = 0;
        keep();
        inside.textContent = '';
      });
    }
  };
}
