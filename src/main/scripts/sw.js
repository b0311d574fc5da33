// Keeps the whole folder on the phone. When any file changes, the name here changes: the new folder is fetched whole and
// then replaces the old one.
const name = 'rungbook-{name}', files = ['{files}'];
self.addEventListener('install', e => {
  e.waitUntil(caches.open(name).then(cache => cache.addAll(files.map(file => new Request(file, { cache: 'reload' })))).then(() => self.skipWaiting()));
});
self.addEventListener('activate', e => {
  e.waitUntil(caches.keys().then(names => {
    const old = names.filter(other => other.indexOf('rungbook-') === 0 && other !== name);
    return Promise.all(old.map(other => caches.delete(other)));
  }).then(() => self.clients.claim()));
});
self.addEventListener('fetch', e => {
  if (e.request.method !== 'GET') return;
  e.respondWith(caches.match(e.request, { ignoreSearch: true }).then(kept => kept || fetch(e.request)));
});
