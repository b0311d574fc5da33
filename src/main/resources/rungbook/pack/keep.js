// Keeps field records. Each has a name of its own in the phone's storage, so that two tabs never write over each other. Storage
// reaches the disk some seconds late, so a record is written to the phone's database too, which is there at once; and a page that
// is left keeps what storage was told, not what a database was. Where there is neither, the record is in the address.
(function () {
'use strict';
const NAME = 'rungbook-record-', FORMAT = 'rungbook-record/1', STORE = 'records';
const waiting = [];
let base, last = null, kept = true;

function parsed(text) {
  try {
    const r = JSON.parse(text);
    return r && r.format === FORMAT && /^[0-9a-f]{16}$/.test(r.id) && Array.isArray(r.steps) && Array.isArray(r.packs) ? r : null;
  } catch { return null; }
}
function storage(act) {
  try { return act(localStorage); } catch { return null; }
}
function ready(opened) {
  base = opened;
  waiting.forEach(function (act) { act(base); });
}
try {
  const asked = indexedDB.open('rungbook', 1);
  asked.onupgradeneeded = function () { asked.result.createObjectStore(STORE); };
  asked.onsuccess = function () { ready(asked.result); };
  asked.onerror = function (e) { e.preventDefault(); ready(null); };
} catch { base = null; }
// act(store), or act(null) where there is no database
function inBase(mode, act) {
  if (base === undefined) { waiting.push(function () { inBase(mode, act); }); return; }
  let store = null;
  try { store = base.transaction(STORE, mode, { durability: 'strict' }).objectStore(STORE); } catch { /* none, or closed */ }
  act(store);
}
function encoded(text) {
  return btoa(unescape(encodeURIComponent(text))).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}
function stored() {
  return storage(function (s) { return Object.keys(s).filter(function (key) { return key.indexOf(NAME) === 0; }); }) || [];
}
function read(id) {
  return storage(function (s) { return s.getItem(NAME + id); });
}
// what was handed out and closed gives way to what is not, the oldest first
function makeRoom(write) {
  const old = stored().map(function (key) { return parsed(read(key.slice(NAME.length))); })
    .filter(function (r) { return r && r.closed && r.handedOut; })
    .sort(function (one, other) { return one.closed < other.closed ? -1 : 1; });
  while (old.length) {
    drop(old.shift().id);
    if (write()) return true;
  }
  return false;
}
function drop(id) {
  storage(function (s) { s.removeItem(NAME + id); });
  inBase('readwrite', function (store) { if (store) store.delete(id); });
}
function fresh() {
  return Array.from(crypto.getRandomValues(new Uint8Array(8)), function (b) { return (b + 256).toString(16).slice(1); }).join('');
}

window.rungbook.keep = {
  FORMAT: FORMAT,
  fresh: fresh,
  drop: drop,
  // remembers what storage has of a record from now on
  open: function (record) {
    last = read(record.id);
    return record;
  },
  // what another tab made of it meanwhile stays: this one goes on under a name of its own
  save: function (record) {
    if (last !== read(record.id) && read(record.id)) {
      record.from = record.id;
      record.id = fresh();
    }
    record.saves++;
    record.saved = new Date().toISOString();
    const text = JSON.stringify(record), write = function () {
      return storage(function (s) { s.setItem(NAME + record.id, text); return true; });
    };
    kept = !!(write() || makeRoom(write));
    last = kept ? text : read(record.id);
    inBase('readwrite', function (store) { if (store) store.put(text, record.id); });
    return kept;
  },
  // what the address of a page ends with; that of another file always has the record
  tail: function (record, always) { return record && (always || !kept) ? '~' + encoded(JSON.stringify(record)) : ''; },
  // the record that an address ends with, or of an id, whichever was written later
  from: function (address, id) {
    let given = null;
    try { given = parsed(decodeURIComponent(escape(atob((address.split('~')[1] || '').replace(/-/g, '+').replace(/_/g, '/'))))); } catch { /* none */ }
    const own = parsed(read(given ? given.id : id));
    return own && !(given && given.saves > own.saves) ? own : given;
  },
  // every record of this phone, the newest first
  all: function (done) {
    const found = {};
    function add(text) {
      const r = parsed(text);
      if (r && !(found[r.id] && found[r.id].saves >= r.saves)) found[r.id] = r;
    }
    function finish() {
      done(Object.values(found).sort(function (one, other) { return one.saved < other.saved ? 1 : -1; }));
    }
    stored().forEach(function (key) { add(read(key.slice(NAME.length))); });
    inBase('readonly', function (store) {
      const asked = store && store.getAll();
      if (!asked) { finish(); return; }
      asked.onsuccess = function () { asked.result.forEach(add); finish(); };
      asked.onerror = finish;
    });
  }
};
})();
