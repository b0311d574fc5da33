// Keeps the whole folder on the phone. A new edition of anything has another name here, is fetched whole, and then takes over.
var name = 'rungbook-{name}', files = {files};
self.addEventListener('install', function (e) {
  e.waitUntil(caches.open(name).then(function (cache) {
    return cache.addAll(files.map(function (file) { return new Request(file, { cache: 'reload' }); }));
  }).then(function () { return self.skipWaiting(); }));
});
self.addEventListener('activate', function (e) {
  e.waitUntil(caches.keys().then(function (names) {
    return Promise.all(names.map(function (old) { return old.indexOf('rungbook-') === 0 && old !== name ? caches.delete(old) : null; }));
  }).then(function () { return self.clients.claim(); }));
});
self.addEventListener('fetch', function (e) {
  if (e.request.method !== 'GET') return;
  e.respondWith(caches.match(e.request, { ignoreSearch: true }).then(function (kept) { return kept || fetch(e.request); }));
});
