// Keeps the whole folder on the phone. When any file changes, the name here changes: the new folder is fetched whole and
// then replaces the old one.
(function () {
'use strict';
const name = 'rungbook-{name}', files = {files};
self.addEventListener('install', function (e) {
  e.waitUntil(caches.open(name).then(function (cache) {
    return cache.addAll(files.map(function (file) { return new Request(file, { cache: 'reload' }); }));
  }).then(function () { return self.skipWaiting(); }));
});
self.addEventListener('activate', function (e) {
  e.waitUntil(caches.keys().then(function (names) {
    const old = names.filter(function (other) { return other.indexOf('rungbook-') === 0 && other !== name; });
    return Promise.all(old.map(function (other) { return caches.delete(other); }));
  }).then(function () { return self.clients.claim(); }));
});
self.addEventListener('fetch', function (e) {
  if (e.request.method !== 'GET') return;
  e.respondWith(caches.match(e.request, { ignoreSearch: true }).then(function (kept) { return kept || fetch(e.request); }));
});
})();
