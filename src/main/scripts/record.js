// The page of the field record, and what the start page says of a job that is not closed.
import { keep } from './keep.js';
import { button, make } from './parts.js';
import { share } from './share.js';
import { walk } from './walk.js';

const doc = document;
const ADDRESS_ONLY = 'This phone keeps nothing for this page: the record is in its address. Share or save it first.';

function field(label, tag, inside, value, took) {
  const box = make(tag, '', '', make('label', label, 'field', inside));
  box.value = value;
  box.oninput = () => { took(box.value); };
  return box;
}
function ago(at) {
  const minutes = Math.max(0, Math.round((Date.now() - Date.parse(at)) / 60000));
  return minutes < 60 ? minutes + ' min ago' : minutes < 2880 ? Math.round(minutes / 60) + ' h ago' : share.time(at);
}
function named(r) {
  return (r.job || r.packs[0].title) + ' · ' + (r.closed ? 'closed ' + share.time(r.closed)
    : r.steps.length + (r.steps.length > 1 ? ' steps, ' : ' step, ') + ago(r.saved) + ', at ' + r.now.number + ' ' + r.now.title);
}
// what nobody should leave so without knowing it
function stillOpen(open, inside) {
  const box = make('div', '', 'still', inside);
  make('h3', 'Still open, off or set', '', box);
  return open.map(words => make('p', words, '', box));
}

// on.go(id, way) shows a page, on.onward(record) a page of any tree, on.changed() what the address ends with
export function recordPage(page, on) {
  let told, panel;
  function say(words) { told.textContent = words; }
  function changed() {
    say(walk.save() ? 'Kept on this phone.' : ADDRESS_ONLY);
    on.changed();
  }
  function handed(words) {
    walk.record().handedOut = new Date().toISOString();
    changed();
    say(words);
  }
  function copy(pre) {
    getSelection().selectAllChildren(pre);
    if (doc.execCommand('copy')) handed('Copied.'); else say('Selected: now copy it.');
  }
  function answers(r) {
    const list = make('ol', '', 'answers', page);
    r.steps.forEach(s => {
      const li = make('li', '', s.kind, list);
      make('b', s.number + ' ' + s.title, '', li);
      make('span', share.answer(s) + ' · ' + new Date(s.at).toLocaleTimeString('en-US', { timeStyle: 'short' }), '', li);
      (s.says || []).forEach(words => { make('strong', words, '', li); });
      const note = make('details', '', '', li);
      make('summary', s.note ? 'Note: ' + s.note : 'Note', '', note);
      field('Note on step ' + s.number, 'input', note, s.note || '', words => { s.note = words; changed(); });
    });
    (r.now.says || []).forEach(words => { make('strong', words, '', page); });
  }
  function closing() {
    const r = walk.record(), open = walk.left();
    panel.textContent = '';
    make('h3', 'Close the record', '', panel);
    const boxes = stillOpen(open, panel).map(line => {
      const words = line.textContent, label = make('label', '', '', line), box = make('input', '', '', label);
      line.firstChild.remove();
      box.type = 'checkbox';
      label.append('Put right: ' + words);
      return box;
    });
    if (!open.length) panel.lastChild.remove();
    const why = open.length && field('Why the rest stays so, and who knows it', 'input', panel, r.why || '', () => {});
    const said = make('p', '', 'told', panel);
    said.setAttribute('role', 'alert');
    button('Close it', panel, () => {
      const left = open.filter((words, i) => !boxes[i].checked);
      if (left.length && !why.value.trim()) { said.textContent = 'Put it right, or write why it stays so: ' + left.join('; '); return; }
      r.left = left;
      if (left.length) r.why = why.value.trim(); else delete r.why;
      r.closed = new Date().toISOString();
      walk.save();
      show();
    });
    panel.scrollIntoView();
  }
  function others(r) {
    keep.all(function (all) {
      const rest = all.filter(one => one.id !== r.id);
      if (!rest.length) return;
      make('h3', 'Other records on this phone', '', page);
      const list = make('div', '', 'tools', page);
      rest.forEach(one => { button(named(one), list, () => { on.onward(one, true); }); });
    });
  }
  function erase() {
    if (this.dataset.sure) { keep.drop(walk.record().id); on.go(':start', null); }
    this.dataset.sure = true;
    this.textContent = 'Delete it for good: press again';
  }
  function show() {
    const r = walk.record();
    page.textContent = '';
    make('h2', 'Field record', '', page);
    if (!r) { make('p', 'Nothing is recorded yet.', '', page); others({}); return; }
    make('p', r.closed ? 'Closed ' + share.time(r.closed) : 'Not closed', 'state', page);
    field('Job, unit or address', 'input', page, r.job, words => { r.job = words; changed(); });
    answers(r);
    const open = r.closed ? r.left : walk.left();
    if (open.length) stillOpen(open, page);
    if (r.why) make('p', r.why, '', page);
    field('Notes', 'textarea', page, r.notes, words => { r.notes = words; changed(); });
    told = make('p', '', 'told', page);
    told.setAttribute('role', 'status');
    const out = make('div', '', 'tools', page);
    if (!r.closed) button('Close the record', out, closing);
    if (navigator.share) {button('Share', out, () => {
      navigator.share({ title: named(r), text: share.text() }).then(() => { handed('Shared.'); }, () => {});
    });}
    button('QR pictures', out, () => { share.pictures(panel); panel.scrollIntoView(); handed('Scan each, then put all of it on the server.'); });
    button('Save as a file', out, () => { share.save(); handed('Saved with the downloads.'); });
    const text = make('details', '', '', page);
    make('summary', 'As text', '', text);
    const pre = make('pre', '', '', text);
    pre.tabIndex = 0;
    pre.setAttribute('aria-label', 'The record');
    pre.setAttribute('role', 'region');
    text.firstChild.onclick = () => { pre.textContent = share.text(); };
    button('Copy', out, () => { pre.textContent = share.text(); text.open = true; copy(pre); });
    panel = make('div', '', 'panel', page);
    button('Delete this record', make('div', '', 'tools', page), erase);
    others(r);
  }
  return show;
};
// a job that is not closed, on the start page. The record of this tab may be newer in the database than in storage
export function resume(start, onward, id) {
  keep.all(all => {
    const now = walk.record(), newer = all.find(r => r.id === id && !(now && now.saves >= r.saves));
    const open = all.filter(r => !r.closed), box = make('div', '', 'resume');
    if (newer) onward(newer);
    if (now || newer || !open.length) return;
    make('h2', 'A job is not closed', '', box);
    open.slice(0, 3).forEach(r => {
      make('p', named(r), '', box);
      button('Go on', box, () => { onward(r); });
    });
    button('Start new', box, () => { box.remove(); });
    start.insertBefore(box, start.firstChild);
  });
};
