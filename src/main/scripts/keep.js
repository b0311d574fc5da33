// Keeps field records. Each has a name of its own in the phone's storage, so that two tabs never write over each other. Storage
// reaches the disk some seconds late, so a record is written to the phone's database too, which is there at once; and a page that
// is left keeps what storage was told, not what a database was. Where there is neither, the record is in the address.
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
  waiting.forEach(act => { act(base); });
}
try {
  const asked = indexedDB.open('rungbook', 1);
  asked.onupgradeneeded = () => { asked.result.createObjectStore(STORE); };
  asked.onsuccess = () => { ready(asked.result); };
  asked.onerror = e => { e.preventDefault(); ready(null); };
} catch { base = null; }
// act(store), or act(null) where there is no database
function inBase(mode, act) {
  if (base === undefined) { waiting.push(() => { inBase(mode, act); }); return; }
  let store = null;
  try { store = base.transaction(STORE, mode, { durability: 'strict' }).objectStore(STORE); } catch { /* none, or closed */ }
  act(store);
}
function encoded(text) {
  return btoa(unescape(encodeURIComponent(text))).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}
function stored() {
  return storage(s => Object.keys(s).filter(key => key.indexOf(NAME) === 0)) || [];
}
function read(id) {
  return storage(s => s.getItem(NAME + id));
}
// what was handed out and closed gives way to what is not, the oldest first
function makeRoom(write) {
  const old = stored().map(key => parsed(read(key.slice(NAME.length))))
    .filter(r => r && r.closed && r.handedOut)
    .sort((one, other) => one.closed < other.closed ? -1 : 1);
  while (old.length) {
    drop(old.shift().id);
    if (write()) return true;
  }
  return false;
}
function drop(id) {
  storage(s => { s.removeItem(NAME + id); });
  inBase('readwrite', store => { if (store) store.delete(id); });
}
function fresh() {
  return Array.from(crypto.getRandomValues(new Uint8Array(8)), b => (b + 256).toString(16).slice(1)).join('');
}

export const keep = {
  FORMAT: FORMAT,
  fresh: fresh,
  drop: drop,
  // remembers what storage has of a record from now on: all of it, or the address goes on to carry it
  open: record => {
    last = read(record.id);
    const own = parsed(last);
    kept = !!own && own.saves >= record.saves;
    return record;
  },
  // what another tab made of it meanwhile stays: this one goes on under a name of its own
  save: record => {
    if (last !== read(record.id) && read(record.id)) {
      record.from = record.id;
      record.id = fresh();
    }
    record.saves++;
    record.saved = new Date().toISOString();
    const text = JSON.stringify(record), write = () => storage(s => { s.setItem(NAME + record.id, text); return true; });
    kept = !!(write() || makeRoom(write));
    last = kept ? text : read(record.id);
    inBase('readwrite', store => { if (store) store.put(text, record.id); });
    return kept;
  },
  // what the address of a page ends with; that of another file always has the record
  tail: (record, always) => record && (always || !kept) ? '~' + encoded(JSON.stringify(record)) : '',
  // the record that an address ends with, or of an id, whichever was written later
  from: (address, id) => {
    let given = null;
    try { given = parsed(decodeURIComponent(escape(atob((address.split('~')[1] || '').replace(/-/g, '+').replace(/_/g, '/'))))); } catch { /* none */ }
    const own = parsed(read(given ? given.id : id));
    return own && !(given && given.saves > own.saves) ? own : given;
  },
  // every record of this phone, the newest first
  all: done => {
    const found = {};
    function add(text) {
      const r = parsed(text);
      if (r && !(found[r.id] && found[r.id].saves >= r.saves)) found[r.id] = r;
    }
    function finish() {
      done(Object.values(found).sort((one, other) => one.saved < other.saved ? 1 : -1));
    }
    stored().forEach(key => { add(read(key.slice(NAME.length))); });
    inBase('readonly', store => {
      const asked = store && store.getAll();
      if (!asked) { finish(); return; }
      asked.onsuccess = () => { asked.result.forEach(add); finish(); };
      asked.onerror = finish;
    });
  }
};
