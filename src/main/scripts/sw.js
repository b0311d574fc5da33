// Keeps the whole folder on the phone. When any file changes, the name here changes. Then the new edition is fetched beside the
// old one, each file is held to its digest, and only a whole edition takes the old one's place, when nobody reads that any more or
// somebody asks for it. An edition that is not whole, as while somebody copies the folder, is dropped and tried again at the next
// visit: the browser compares this script with that of the last whole edition.
const name = 'rungbook-{name}', files = ['{files}'], INDEX = 'index.html';

function tell(what) {
  return self.clients.matchAll({ includeUncontrolled: true }).then(pages => pages.forEach(page => page.postMessage(what)));
}
function hex(bytes) {
  return Array.from(new Uint8Array(bytes), b => (b + 256).toString(16).slice(1)).join('');
}
async function fetched(file, digest) {
  const answer = await fetch(new Request(file, { cache: 'reload' })).catch(() => {
    throw new Error(decodeURIComponent(file) + ' could not be fetched');
  });
  if (!answer.ok) throw new Error('the server has no ' + decodeURIComponent(file) + ' (' + answer.status + ')');
  const bytes = await answer.arrayBuffer();
  if (hex(await crypto.subtle.digest('SHA-256', bytes)) !== digest) {
    throw new Error(decodeURIComponent(file) + ' on the server is of another edition; the folder may be only half copied');
  }
  return function () { return new Response(bytes, { headers: { 'Content-Type': answer.headers.get('Content-Type') || 'text/html' } }); };
}
async function keep() {
  await caches.delete(name);
  const cache = await caches.open(name);
  for (let i = 0; i < files.length; i++) {
    const file = files[i][0], made = await fetched(file, files[i][1]);
    await cache.put(file, made());
    if (file === INDEX) await cache.put('./', made());
    await tell({ got: i + 1, of: files.length });
  }
}
function why(e) {
  return e.name === 'QuotaExceededError' ? 'there is no room for it' : e.name === 'SecurityError' ? 'storage is refused' : e.message;
}
async function state() {
  const cache = await caches.open(name);
  const kept = await Promise.all(files.map(file => cache.match(file[0])));
  return { kept: kept.filter(Boolean).length, of: files.length, edition: '{edition}' };
}
self.addEventListener('install', e => {
  e.waitUntil(keep().catch(async function (failed) {
    await tell({ notKept: why(failed) });
    await caches.delete(name).catch(() => false);
    throw failed;
  }));
});
self.addEventListener('activate', e => {
  e.waitUntil(caches.keys().then(names => {
    const old = names.filter(other => other.indexOf('rungbook-') === 0 && other !== name);
    return Promise.all(old.map(other => caches.delete(other)));
  }).then(() => self.clients.claim()));
});
self.addEventListener('message', e => {
  if (e.data === 'take') self.skipWaiting();
  if (e.data === 'state') e.waitUntil(state().then(said => e.ports[0].postMessage(said)));
});
// from this edition alone: another one may be in the making
self.addEventListener('fetch', e => {
  if (e.request.method !== 'GET') return;
  e.respondWith(caches.open(name).then(cache => cache.match(e.request, { ignoreSearch: true })).catch(() => undefined)
    .then(kept => kept || fetch(e.request)));
});
