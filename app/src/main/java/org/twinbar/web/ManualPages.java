package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The manual: the pages of docs, which the build puts into the jar; none needs a network. */
final class ManualPages {

    /** What a name may look like, so that nothing but the manual is read from the jar. */
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9-]*");

    private static final Pattern PICTURE = Pattern.compile("[a-z0-9-]+\\.(png|svg)");

    /** What somebody at the rig may look up; a phone reaches no other page. */
    private static final List<String> AT_THE_RIG =
            List.of("manual/rig", "manual/pictures-and-film", "manual/safety");

    private ManualPages() {}

    static void routesAtTheRig(RoutesConfig routes) {
        routes.get("/manual/{page}", ManualPages::pageAtTheRig);
        routes.get("/manual/pictures/{picture}", ManualPages::picture);
    }

    private static void pageAtTheRig(Context request) {
        String path = "manual/" + name(request, "page");
        String text = Optional.of(path)
                .filter(AT_THE_RIG::contains)
                .flatMap(ManualPages::text)
                .orElseThrow(ManualPages::unknown);
        Pages.show(
                request,
                "rig/manual",
                Map.of("page", ManualPage.of(path, text, AT_THE_RIG::contains)));
    }

    static void routes(RoutesConfig routes) {
        routes.get("/manual", request -> show(request, "README"));
        routes.get("/manual/methods", request -> show(request, "methods/README"));
        routes.get(
                "/manual/methods/{method}",
                request -> show(request, "methods/" + name(request, "method")));
        routes.get(
                "/manual/examples/{method}",
                request -> show(request, "examples/" + name(request, "method") + "/README"));
        routes.get("/manual/pictures/{picture}", ManualPages::picture);
        routes.get("/manual/{page}", ManualPages::page);
    }

    private static void page(Context request) {
        String name = name(request, "page");
        show(request, text("manual/" + name).isPresent() ? "manual/" + name : name);
    }

    private static void show(Context request, String path) {
        String text = text(path).orElseThrow(ManualPages::unknown);
        Pages.show(
                request,
                "manual",
                Map.of("page", ManualPage.of(path, text, other -> text(other).isPresent())));
    }

    private static String name(Context request, String parameter) {
        String name = request.pathParam(parameter);
        if (!NAME.matcher(name).matches()) {
            throw unknown();
        }
        return name;
    }

    private static void picture(Context request) {
        String name = request.pathParam("picture");
        if (!PICTURE.matcher(name).matches()) {
            throw unknown();
        }
        byte[] bytes = bytes("pictures/" + name)
                .or(() -> bytes(name))
                .orElseThrow(() -> Refusal.notFound("The manual has no such picture."));
        request.header("Cache-Control", "max-age=300");
        request.contentType(name.endsWith(".png") ? "image/png" : "image/svg+xml")
                .result(bytes);
    }

    private static Refusal unknown() {
        return Refusal.notFound("The manual has no such page.");
    }

    private static Optional<String> text(String path) {
        return bytes(path + ".md").map(it -> new String(it, StandardCharsets.UTF_8));
    }

    private static Optional<byte[]> bytes(String path) {
        try (InputStream file = ManualPages.class.getResourceAsStream("/docs/" + path)) {
            return file == null ? Optional.empty() : Optional.of(file.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
