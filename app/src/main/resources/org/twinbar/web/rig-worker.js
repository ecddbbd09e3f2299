"use strict";

// Gives pages of the rig from what was seen last while the desk can't be reached. It keeps nothing
// that is entered: that waits in the page's own store, and the page sends it.
const KEPT = "twinbar-rig";

addEventListener("install", () => self.skipWaiting());
addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

addEventListener("fetch", (event) => {
    const request = event.request;
    const path = new URL(request.url).pathname;
    const isPage = request.mode === "navigate" && /^(\/rig|\/studies\/[^/]+\/rig(\/[^/]+)?)$/.test(path);
    if (request.method === "GET" && (isPage || path.startsWith("/assets/"))) {
        event.respondWith(freshOrKept(request, isPage));
    }
});

async function freshOrKept(request, isPage) {
    const cache = await caches.open(KEPT);
    try {
        const answer = await fetch(request);
        if (answer.ok) {
            await cache.put(request, answer.clone());
        }
        return answer;
    } catch (failure) {
        // Every page of a test has all its specimens, so that any of them will do.
        const kept = await cache.match(request, { ignoreSearch: isPage });
        if (!kept) {
            throw failure;
        }
        return kept;
    }
}
