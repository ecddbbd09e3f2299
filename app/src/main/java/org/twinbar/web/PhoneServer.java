package org.twinbar.web;

import io.javalin.Javalin;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import io.javalin.util.JavalinBindException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.study.Workspace;

/**
 * The rig's pages on one address of the local network, for phones that were let in. It is another
 * server than the desk's, so that no page of the desk can be reached through it.
 */
final class PhoneServer implements AutoCloseable {

    /** The same each time, since what waits on a phone belongs to an address with its port. */
    static final int PORT = 8477;

    private static final String TOKEN = "twinbar-phone";

    private final Javalin javalin;
    private final String address;
    private final Phones phones;

    private PhoneServer(Javalin javalin, String address, Phones phones) {
        this.javalin = javalin;
        this.address = address;
        this.phones = phones;
    }

    /** @throws Refusal where neither the usual port nor any other is free at the address */
    static PhoneServer start(Workspace workspace, Phones phones, String address) {
        try {
            return start(workspace, phones, address, PORT);
        } catch (JavalinBindException e) {
            try {
                return start(workspace, phones, address, 0);
            } catch (JavalinBindException none) {
                throw Refusal.badRequest("The address %s could not be opened.".formatted(address));
            }
        }
    }

    private static PhoneServer start(Workspace workspace, Phones phones, String address, int port) {
        Javalin javalin = Javalin.create(config -> {
            WebServer.configure(config);
            RoutesConfig routes = config.routes;
            routes.before(request -> guard(request, phones, address));
            Assets.routes(routes);
            routes.get("/", request -> request.redirect("/rig", HttpStatus.SEE_OTHER));
            routes.get("/join", request -> join(request, "", Form.EMPTY));
            routes.post("/join", request -> letIn(request, phones));
            new RigPages(workspace, request -> phone(request, phones).name(), RigPages.From.PHONE)
                    .routes(routes);
            ManualPages.routesAtTheRig(routes);
            WebServer.refusals(routes, "rig/refusal");
        });
        javalin.start(address, port);
        return new PhoneServer(javalin, address, phones);
    }

    private static void guard(Context request, Phones phones, String address) {
        Guard.check(request, List.of(address + ":" + request.port()));
        String path = request.path();
        boolean open = path.equals("/join") || path.startsWith("/assets/");
        if (!open && find(request, phones).isEmpty()) {
            if (path.equals("/rig") || path.equals("/")) {
                request.redirect("/join", HttpStatus.SEE_OTHER);
                request.skipRemainingHandlers();
            } else {
                throw Refusal.forbidden("This phone was not let in, or was shut out; what waits on"
                        + " it is kept. Ask for a code at the desk, and open /join.");
            }
        }
    }

    private static Optional<Phones.Phone> find(Context request, Phones phones) {
        return Optional.ofNullable(request.cookie(TOKEN)).flatMap(phones::showing);
    }

    private static Phones.Phone phone(Context request, Phones phones) {
        return find(request, phones)
                .orElseThrow(() -> Refusal.forbidden("This phone was shut out."));
    }

    private static void join(Context request, String trouble, Form form) {
        String code = Optional.ofNullable(request.queryParam("code")).orElse("");
        Form filled = form.said("code").isEmpty() ? form.with("code", code) : form;
        Pages.show(request, "rig/join", Map.of("trouble", trouble, "form", filled));
    }

    private static void letIn(Context request, Phones phones) {
        Form form = Form.of(request);
        try {
            Phones.Phone phone = phones.join(form.text("code"), form.text("name"));
            Cookie cookie = new Cookie(TOKEN, phone.token());
            cookie.setHttpOnly(true);
            cookie.setSameSite(SameSite.STRICT);
            request.cookie(cookie);
            request.redirect("/rig", HttpStatus.SEE_OTHER);
        } catch (Refusal e) {
            request.status(e.status());
            join(request, Words.sentence(e), form);
        }
    }

    /** Returns where a phone begins. */
    String url() {
        return "http://%s:%s/".formatted(address, javalin.port());
    }

    String url(Phones.Code code) {
        return url() + "join?code=" + code.text();
    }

    @Override
    public void close() {
        phones.shutAllOut();
        javalin.stop();
    }
}
