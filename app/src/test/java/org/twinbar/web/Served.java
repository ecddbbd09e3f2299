package org.twinbar.web;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.twinbar.method.Methods;
import org.twinbar.study.Demo;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;

/** A workspace with the demo study, served on any free port. */
record Served(Workspace workspace, WebServer server, StudyName demo) implements AutoCloseable {

    static final String BARS = "specimen,group,orientation,area_mm2,peak_force_N\n"
            + "P1,plain,flat,40,2000\nP2,plain,flat,40,2040\nP3,plain,flat,40,1960\n"
            + "C1,coated,flat,40,2400\nC2,coated,flat,40,2440\nC3,coated,flat,40,2360\n"
            + "P4,plain,upright,40,1000\nP5,plain,upright,40,1040\nP6,plain,upright,40,960\n"
            + "C4,coated,upright,40,1010\nC5,coated,upright,40,1050\nC6,coated,upright,40,960\n";

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String BOUNDARY = "----fittings";

    static Served in(Path folder) {
        return in(folder, List.of());
    }

    /** @param nearby addresses that may be opened to phones */
    static Served in(Path folder, List<String> nearby) {
        Methods methods = Methods.builtIn();
        Workspace workspace = Workspace.open(folder, methods, NOON, "Twinbar test");
        StudyName demo = Demo.into(workspace);
        return new Served(workspace, WebServer.start(workspace, methods, 0, () -> nearby), demo);
    }

    String study() {
        return Links.study(demo);
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(uri(path)));
    }

    /** Returns a file as it comes. */
    HttpResponse<byte[]> bytes(String path) {
        try {
            return CLIENT.send(
                    HttpRequest.newBuilder(uri(path)).build(), BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    HttpResponse<String> post(String path, Map<String, String> fields) {
        String form = fields.entrySet().stream()
                .map(it -> it.getKey() + "="
                        + URLEncoder.encode(it.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return send(HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", origin())
                .POST(BodyPublishers.ofString(form)));
    }

    /** Sends a table as the form on the first page does. */
    HttpResponse<String> upload(String table, String content) {
        return upload(new Part("table", table, content.getBytes(StandardCharsets.UTF_8)));
    }

    /** A file of a form. */
    record Part(String field, String name, byte[] bytes) {}

    /** Sends files as the form on the first page does, by their names. */
    HttpResponse<String> upload(Part... files) {
        return upload("/trials", files);
    }

    /** Sends files to a page as a form does. */
    HttpResponse<String> upload(String path, Part... files) {
        List<byte[]> body = new ArrayList<>();
        for (Part file : files) {
            body.add("--%s\r\nContent-Disposition: form-data; name=\"%s\"; filename=\"%s\"\r\n\r\n"
                    .formatted(BOUNDARY, file.field(), file.name())
                    .getBytes(StandardCharsets.UTF_8));
            body.add(file.bytes());
            body.add("\r\n".getBytes(StandardCharsets.UTF_8));
        }
        body.add("--%s--\r\n".formatted(BOUNDARY).getBytes(StandardCharsets.UTF_8));
        return send(HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                .header("Origin", origin())
                .POST(BodyPublishers.ofByteArrays(body)));
    }

    /** Hands the bars in and returns where they are. */
    String trial() {
        return upload("bars.csv", BARS).headers().firstValue("Location").orElseThrow();
    }

    String origin() {
        String address = server.address().toString();
        return address.substring(0, address.length() - 1);
    }

    URI uri(String path) {
        return server.address().resolve(path);
    }

    static HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return CLIENT.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    @Override
    public void close() {
        server.close();
        workspace.close();
    }
}
