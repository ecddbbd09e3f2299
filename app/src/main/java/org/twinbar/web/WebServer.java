package org.twinbar.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import java.net.URI;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Methods;
import org.twinbar.study.Workspace;

/** The workspace's pages, served on the loopback address until closed. */
public final class WebServer implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);
    private static final String LOOPBACK = "127.0.0.1";

    private final Javalin javalin;

    private WebServer(Javalin javalin) {
        this.javalin = javalin;
    }

    /**
     * Serves a workspace; it stays open when the server is closed.
     *
     * @param methods those that readings may be calculated by
     * @param port where to listen, 0 for any that is free
     * @throws InputException where the port is taken
     */
    public static WebServer start(Workspace workspace, Methods methods, int port) {
        Javalin javalin = Javalin.create(config -> configure(config, workspace, methods));
        try {
            javalin.start(LOOPBACK, port);
        } catch (JavalinBindException e) {
            throw new InputException(
                    "port %s is taken; name another, or 0 for any that is free".formatted(port));
        }
        return new WebServer(javalin);
    }

    /** Returns where the first page is. */
    public URI address() {
        return URI.create("http://%s:%s/".formatted(LOOPBACK, javalin.port()));
    }

    @Override
    public void close() {
        javalin.stop();
    }

    private static void configure(JavalinConfig config, Workspace workspace, Methods methods) {
        config.startup.showJavalinBanner = false;
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        RoutesConfig routes = config.routes;
        routes.before(Guard::check);
        Assets.routes(routes);
        new Doors(workspace).routes(routes);
        new StudyPages(workspace).routes(routes);
        routes.exception(
                Refusal.class,
                (refusal, request) -> Pages.refuse(request, refusal.status(), refusal.sentence()));
        routes.exception(
                InputException.class,
                (refusal, request) -> Pages.refuse(request, 400, Words.sentence(refusal)));
        routes.exception(
                HttpResponseException.class,
                (refusal, request) ->
                        Pages.refuse(request, refusal.getStatus(), "There is no such page."));
        routes.exception(Exception.class, (failure, request) -> {
            LOG.error("{} {} failed", request.method(), request.path(), failure);
            Pages.refuse(
                    request,
                    500,
                    "Twinbar failed to make this page; what is kept in the workspace is as it was."
                            + " The log says more.");
        });
    }
}
