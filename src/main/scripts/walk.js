// The field record of one job: a list of what was answered, through as many trees as the job needs. docs/field-record.md has its
// form. Each answer says all that a reader needs, since the page of another tree is not at hand.
import { keep } from './keep.js';
import { trees } from './trees.js';

const doc = document, loaded = Date.now();
let record = null;

// where several trees are in one file, each is inside an element that names it
function treeOf(page) {
  const own = page.closest('[data-tree]');
  return own ? own.dataset.tree : nameOf(doc.body.dataset.file);
}
// of many trees only one is in the document: see trees.js
function byId(id) {
  return doc.getElementById(id) || trees && trees.find(id);
}
// the page of a step that an answer names, if it is in this file; among many trees its address says the tree too
function pageOf(taken) {
  const page = byId(trees ? taken.tree + '--' + taken.step : taken.step);
  return page && treeOf(page) === taken.tree ? page.closest('.page') : null;
}
function nameOf(file) {
  return decodeURIComponent(file).replace(/(\.tree)?\.html$/, '');
}
function packOf(page) {
  const own = page.closest('[data-tree]'), about = {};
  (own || doc).querySelectorAll('.block div').forEach(cell => { about[cell.firstChild.textContent] = cell.lastChild.textContent; });
  return { tree: treeOf(page), title: own && own.dataset.title || doc.title, file: doc.body.dataset.file,
    digest: own && own.dataset.digest || doc.querySelector('[name=rungbook-digest]').content,
    revision: about.Revision, system: about.System, meter: about.Meter };
}
function packIndex(page) {
  const own = packOf(page), index = record.packs.findIndex(p => p.tree === own.tree && p.digest === own.digest);
  return index < 0 ? record.packs.push(own) - 1 : index;
}
// the words of a page's box that says what was found or how it ended
function says(page) {
  const lines = page.querySelectorAll('.concluded p');
  return lines.length ? [].map.call(lines, line => line.textContent) : undefined;
}
function placeOf(page) {
  const h = page.querySelector('h2'), number = page.querySelector('.n');
  return { tree: treeOf(page), pack: packIndex(page), step: page.dataset.id || page.id, number: number ? number.textContent : '',
    title: number ? h.lastChild.textContent.trim() : 'Start', says: says(page) };
}
// a reading as it was typed, 24.5 V, apart; overload and the like are words
function readingOf(page, words) {
  const number = /^([−\d.]+) (.+)$/.exec(words), expected = page.querySelector('.window');
  return { reading: number ? number[1].replace('−', '-') : words, unit: number ? number[2] : page.dataset.u,
    expected: expected ? expected.textContent : undefined };
}
// what is open, off, bypassed or set after an answer: see StepStates.lasting. What a step put right is not put right when it failed
function openAfter(page, before, failed) {
  return (page.dataset.s || '').split('\n').reduce((open, change) => {
    const words = change.slice(1);
    if (!words || failed && change[0] === '-') return open;
    open = open.filter(one => one.indexOf(words) !== 0);
    return change[0] === '+' ? open.concat(words) : open;
  }, before);
}
// who comes by a bare link finds what the way here leaves so
function openAt(page) {
  return [].map.call(page.querySelectorAll('.state'), state => state.textContent)
    .filter(words => words.indexOf('perhaps ') !== 0);
}
function kindOf(page) {
  return ['check', 'task', 'finding', 'end'].find(kind => page.classList.contains(kind));
}
function entry(page, link, index, typed, before) {
  const at = Date.now(), made = placeOf(page), minutes = (at - (before ? Date.parse(before.at) : loaded)) / 60000;
  Object.assign(made, { kind: kindOf(page), way: index, answer: [].map.call(link.querySelectorAll('u'),
    u => u.textContent).join(', ') });
  if (typed) {
    Object.assign(made, readingOf(page, typed.words));
    if (typed.first) made.first = typed.first;
  }
  return Object.assign(made, { at: new Date(at).toISOString(), minutes: Math.max(0, Math.round(minutes * 10) / 10),
    open: openAfter(page, before ? before.open : openAt(page), link.classList.contains('out')) });
}
// where the work is after an answer
function target(link) {
  const to = link.getAttribute('href').split('~')[0].split('#'), inside = !to[0] && byId(decodeURIComponent(to[1]));
  return inside ? placeOf(inside.closest('.page'))
    : { tree: nameOf(to[0]), file: to[0], step: to[1] || '', number: '', title: link.querySelector('span').textContent };
}

export const walk = {
  treeOf: treeOf,
  byId: byId,
  pageOf: pageOf,
  record: () => record,
  save: () => keep.save(record),
  // what the address ends with; that of another file has a record in any case
  tail: carried => keep.tail(carried || record, !!carried),
  // what is still open, off or set
  left: () => record.steps.length ? record.steps[record.steps.length - 1].open : [],
  // a record with an answer more. What was answered after this place before, and was taken back, is kept apart
  add: (way, page, link, index, typed) => {
    if (!record) {
      record = { format: keep.FORMAT, id: keep.fresh(), saves: 0, saved: '', job: '', notes: '', packs: [], steps: [], undone: [] };
    }
    const next = way.concat(entry(page, link, index, typed, way[way.length - 1]));
    record.undone = record.undone.concat(record.steps.slice(way.length));
    record.steps = next;
    record.now = target(link);
    delete record.closed;
    keep.save(record);
    return next;
  },
  // the answers of a record up to a place in the browser's history; without an id, those of a new one
  at: (id, count) => {
    if (!id) record = null;
    else if (!record || record.id !== id && record.from !== id) {
      const found = keep.from(location.hash, id);
      record = found && keep.open(found);
    }
    return record ? record.steps.slice(0, count) : [];
  },
  open: found => {
    record = keep.open(found);
    return record.steps;
  },
  // a record that came in the address, from another tree: it goes on at this page
  arrive: page => {
    const found = keep.from(location.hash);
    if (!found) return [];
    record = keep.open(found);
    if (record.now.tree !== treeOf(page) || !record.now.title) record.now = placeOf(page);
    keep.save(record);
    return record.steps;
  }
};
