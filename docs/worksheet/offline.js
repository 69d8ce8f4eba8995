// The worksheet without a network: its files are kept when it is first opened, and a new version takes over once every
// page of the old one is closed. Nothing else of the site is touched.
const VERSION = "worksheet {{version}}";
const FILES = "{{files}}".split(" ");

const addressOf = (file) => new URL(file, self.registration.scope).href;
const kept = new Set(FILES.map(addressOf));

self.addEventListener("install", (event) => {
  const fresh = FILES.map((file) => new Request(addressOf(file), { cache: "reload" }));
  event.waitUntil(caches.open(VERSION).then((cache) => cache.addAll(fresh)));
});

self.addEventListener("activate", (event) => {
  const old = (names) => names.filter((name) => name.startsWith("worksheet ") && name !== VERSION);
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(old(names).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener("fetch", (event) => {
  const { origin, pathname } = new URL(event.request.url);
  if (event.request.method !== "GET" || !kept.has(origin + pathname)) return;
  event.respondWith(
    caches
      .open(VERSION)
      .then((cache) => cache.match(origin + pathname))
      .then((found) => found ?? fetch(event.request)),
  );
});
