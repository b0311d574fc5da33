// A record on its way out: as text with the record's JSON in its last line, as a file, through the phone's own menu, as QR pictures.
import { make } from './parts.js';
import { qr } from './qr.js';
import { walk } from './walk.js';

// what a QR picture of version 13, level L has room for, without its own first words
const PART = 400;

function time(at) {
  return new Date(at).toLocaleString('en-US', { dateStyle: 'medium', timeStyle: 'short' });
}
function answer(s) {
  const first = s.first ? s.first + ', again ' : '', unit = s.unit && /\d/.test(s.reading) ? ' ' + s.unit : '';
  return (s.reading ? first + s.reading + unit + (s.expected ? ' (expected ' + s.expected + ')' : '') + ', ' : '') + 'way “' + s.answer + '”';
}
function lines(s) {
  return ['Step ' + s.number + ' ' + s.title + ': ' + answer(s) + ' · ' + time(s.at)]
    .concat((s.says || []).map(one => '    ' + one), s.note ? ['    Note: ' + s.note] : []);
}
function heading(pack) {
  return ['', pack.title, 'Pack: ' + pack.file + ', revision ' + pack.revision + ', digest '
    + pack.digest.slice(0, 24).replace(/.{4}(?=.)/g, '$& '), [pack.system, pack.meter].filter(Boolean).join(', ')];
}
function words() {
  const r = walk.record(), steps = r.steps, all = [].concat.apply([], steps.map((s, i) => {
    const isNew = !i || s.pack !== steps[i - 1].pack;
    return (isNew ? heading(r.packs[s.pack]) : []).concat(lines(s));
  }));
  const open = r.closed ? r.left : walk.left();
  return ['FIELD RECORD, ' + (r.closed ? 'closed ' + time(r.closed) : 'not closed')].concat(r.job ? ['Job: ' + r.job] : [], all,
    r.now.says ? lines(Object.assign({ answer: '' }, r.now)).slice(1) : [],
    ['', (r.now.says ? 'Ended at step ' : 'Now at step ') + r.now.number + ' ' + r.now.title],
    open.length ? ['STILL OPEN, OFF OR SET: ' + open.join('; ')] : [], r.why ? ['Why: ' + r.why] : [],
    r.undone.length ? ['Taken back:'].concat([].concat.apply([], r.undone.map(lines))) : [],
    r.notes ? ['Notes: ' + r.notes] : []).join('\n') + '\n';
}
// the short form, in letters that every QR reader shows alike; docs/field-record.md says what each place holds
function short() {
  const r = walk.record();
  let before = Date.parse(r.steps[0].at);
  return JSON.stringify({ f: 1, i: r.id, n: r.saves, j: r.job, t: r.notes, b: Math.round(before / 1000),
    p: r.packs.map(p => [p.tree, p.digest.slice(0, 24), p.revision]),
    s: r.steps.map(s => {
      const at = Date.parse(s.at), seconds = Math.round((at - before) / 1000);
      before = at;
      return [s.pack, s.step, s.way, s.answer, seconds].concat(s.reading || s.note ? [s.reading || '', s.unit || ''] : [], s.note ? [s.note] : []);
    }),
    w: r.now.step, o: r.closed ? r.left : walk.left(), y: r.why || '', c: r.closed ? Math.round(Date.parse(r.closed) / 1000) : 0 })
    .replace(/[^\x20-\x7e]/g, c => '\\u' + (c.charCodeAt(0) + 65536).toString(16).slice(1));
}
// numbered parts; none begins or ends with a space, which many readers drop
function parts(whole, id) {
  const count = Math.ceil(whole.length / PART), size = Math.ceil(whole.length / count), cut = [];
  for (let from = 0; from < whole.length;) {
    let end = from + size;
    while (end < whole.length && /\s/.test(whole[end - 1] + whole[end])) end--;
    cut.push(whole.slice(from, end));
    from = end;
  }
  return cut.map((part, i) => 'RUNGBOOK ' + (i + 1) + '/' + cut.length + ' ' + id.slice(0, 4) + ':' + part);
}
// whole pixels a module, so that no line between two is gray
function picture(part, inside) {
  const rows = qr(part), side = rows.length + 8;
  let path = '';
  rows.forEach((row, y) => {
    row.forEach((dark, x) => { if (dark) path += 'M' + (x + 4) + ' ' + (y + 4) + 'h1v1h-1z'; });
  });
  const box = make('div', '', 'qr', inside);
  box.innerHTML = '<svg width="' + side * Math.floor(Math.min(innerWidth - 10, 480) / side) + '" viewBox="0 0 ' + side + ' ' + side
    + '" role="img"><rect width="100%" height="100%" fill="#fff"/><path d="' + path + '"/></svg>';
  return box.firstChild;
}
// people read the words, a server reads the last line
function text() {
  return words() + '\n' + JSON.stringify(walk.record()) + '\n';
}
export const share = {
  answer: answer,
  time: time,
  words: words,
  json: () => JSON.stringify(walk.record()),
  text: text,
  save: () => {
    const a = make('a'), r = walk.record();
    a.href = URL.createObjectURL(new Blob([text()], { type: 'text/plain' }));
    a.download = ('record ' + r.job + ' ' + r.id.slice(0, 4)).replace(/[^\p{L}\p{N}]+/gu, '-') + '.txt';
    a.click();
  },
  pictures: inside => {
    const all = parts(short(), walk.record().id);
    inside.textContent = '';
    all.forEach((part, i) => {
      const title = 'Picture ' + (i + 1) + ' of ' + all.length;
      make('h3', title, '', inside);
      picture(part, inside).setAttribute('aria-label', 'QR code: ' + title);
    });
  }
};
