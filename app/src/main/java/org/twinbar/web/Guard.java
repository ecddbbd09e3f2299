package org.twinbar.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;

import java.util.List;
import java.util.Set;

/** Keeps out what does not come from this machine's own pages. */
final class Guard {

    /** What a page of ours may load and do; the report, which holds its own style, has another. */
    static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self';"
            + " img-src 'self' data:; font-src 'self'; connect-src 'self'; form-action 'self';"
            + " frame-ancestors 'none'; base-uri 'none'";

    private static final Set<HandlerType> READING =
            Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS);

    private Guard() {}

    /** @throws Refusal where the request came under another name, or from another page */
    static void check(Context request) {
        int port = request.port();
        check(request, List.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port));
    }

    /**
     * The same for a server that goes by other names.
     *
     * @param hosts names with their port, the one to tell first
     */
    static void check(Context request, List<String> hosts) {
        headers(request);
        String host = request.header("Host");
        if (host == null || !hosts.contains(host)) {
            throw Refusal.forbidden("This address is not one that Twinbar answers to; open it as"
                    + " http://" + hosts.get(0) + "/.");
        }
        if (!READING.contains(request.method()) && !isFromOurPage(request, host)) {
            throw Refusal.forbidden("This was not sent from a page of Twinbar, so nothing was done."
                    + " Open the page again and send it from there.");
        }
    }

    /** Browsers say where a request was sent from, and no page can make them say otherwise. */
    private static boolean isFromOurPage(Context request, String host) {
        String origin = request.header("Origin");
        return origin == null
                ? "same-origin".equals(request.header("Sec-Fetch-Site"))
                : origin.equals("http://" + host);
    }

    private static void headers(Context request) {
        request.header("Content-Security-Policy", POLICY);
        request.header("X-Content-Type-Options", "nosniff");
        request.header("X-Frame-Options", "DENY");
        request.header("Cross-Origin-Opener-Policy", "same-origin");
        request.header("Cross-Origin-Resource-Policy", "same-origin");
        // With no referrer at all, browsers would hide the origin of our own forms as well.
        request.header("Referrer-Policy", "same-origin");
        request.header("Cache-Control", "no-store");
    }
}
