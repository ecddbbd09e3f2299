package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;
import org.twinbar.report.Fonts;
import org.twinbar.report.Report;

/** Styles, scripts and typefaces, all from the program's own jar. */
final class Assets {

    private static final String WEBJARS = "/META-INF/resources/webjars/";
    private static final String CSS = "text/css; charset=utf-8";
    private static final String SCRIPT = "text/javascript; charset=utf-8";

    private Assets() {}

    static void routes(RoutesConfig routes) {
        routes.get("/assets/report.css", file(CSS, () -> bytes(Report.css())));
        routes.get("/assets/twinbar.css", file(CSS, () -> resource("twinbar.css")));
        routes.get("/assets/twinbar.js", file(SCRIPT, () -> resource("twinbar.js")));
        routes.get("/assets/timer.js", file(SCRIPT, () -> resource("timer.js")));
        routes.get("/assets/curve.js", file(SCRIPT, () -> resource("curve.js")));
        routes.get("/assets/curves.js", file(SCRIPT, () -> resource("curves.js")));
        routes.get("/assets/rig.css", file(CSS, () -> resource("rig.css")));
        routes.get("/assets/rig.js", file(SCRIPT, () -> resource("rig.js")));
        routes.get("/assets/picture.js", file(SCRIPT, () -> resource("picture.js")));
        routes.get("/assets/film.js", file(SCRIPT, () -> resource("film.js")));
        routes.get("/assets/picture.css", file(CSS, () -> resource("picture.css")));
        // A worker serves pages below the folder that it comes from.
        routes.get("/rig-worker.js", file(SCRIPT, () -> resource("rig-worker.js")));
        routes.get("/assets/sign.svg", file("image/svg+xml", () -> resource("sign.svg")));
        routes.get(
                "/assets/htmx.js",
                file(SCRIPT, () -> resource(WEBJARS + "htmx.org/2.0.10/dist/htmx.min.js")));
        routes.get(
                "/assets/uplot.js",
                file(SCRIPT, () -> resource(WEBJARS + "uplot/1.6.30/dist/uPlot.iife.min.js")));
        routes.get(
                "/assets/uplot.css",
                file(CSS, () -> resource(WEBJARS + "uplot/1.6.30/dist/uPlot.min.css")));
        routes.get(
                "/assets/regular.otf", file("font/otf", () -> Fonts.screen(Fonts.Weight.REGULAR)));
        routes.get("/assets/bold.otf", file("font/otf", () -> Fonts.screen(Fonts.Weight.BOLD)));
    }

    private static Handler file(String type, Supplier<byte[]> bytes) {
        return request -> send(request, type, bytes.get());
    }

    private static void send(Context request, String type, byte[] bytes) {
        // Short, so that a newer program's pages don't meet an older one's style for long.
        request.header("Cache-Control", "max-age=300");
        request.contentType(type).result(bytes);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] resource(String name) {
        try (InputStream file = Assets.class.getResourceAsStream(name)) {
            if (file == null) {
                throw new IllegalStateException("the program's jar lacks " + name);
            }
            return file.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
