package org.twinbar.benchmarks;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.twinbar.method.Methods;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;
import org.twinbar.web.WebServer;

/**
 * Asks a served workspace for every page there is, many times over loopback, and says how long that
 * took.
 *
 * <p>Argument: a folder for the workspace, which is filled where it isn't. Each route is asked for
 * each of its studies once, and then {@value #ASKED} times for studies drawn from all 200 with a
 * fixed seed. The run fails where the 95th percentile of a page is above {@value #MOST_MS} ms, or
 * where a route came up that it has no sample for. Pages of a plan, a mix or a recipe are left
 * aside, since they show one study and grow with it alone. Files that are made to be kept (PDF,
 * ZIP) are timed and not judged.
 */
public final class LoadRun {

    private static final int ASKED = 200;
    private static final int MOST_MS = 100;
    private static final long SEED = 20260608;
    private static final Pattern FILE = Pattern.compile("\\.(pdf|zip|csv|stl|3mf|xlsx)$");
    /** Pages of a sealed plan, a mix or a recipe, of which none is there; they are not asked. */
    private static final Pattern OF_A_PLAN =
            Pattern.compile("/plan/.+\\.|/plan/numbers|/register/|/mixes/|/recipes/");

    private static final Pattern PARAMETER = Pattern.compile("[{<](\\w+)[}>]");

    /** What a page is asked with, where it answers more than without. */
    private static final Map<String, String> QUERIES = Map.of(
            "/bench",
            "?method=tensile",
            "/claims/guide",
            "?words=At+least+10+%25+stronger",
            "/archive",
            "?property=peak_force");

    private static final String BARS = "specimen,group,area_mm2,peak_force_N\n"
            + "P1,plain,40,2000\nP2,plain,40,2040\nP3,plain,40,1960\n"
            + "C1,coated,40,2400\nC2,coated,40,2440\nC3,coated,40,2360\n";

    private final HttpClient client = HttpClient.newHttpClient();
    private final Random random = new Random(SEED);
    private final Workspace workspace;
    private final WebServer server;
    private final List<StudyName> studies;
    private final String trial;
    private final List<String> faults = new ArrayList<>();

    private LoadRun(Workspace workspace, WebServer server) {
        this.workspace = workspace;
        this.server = server;
        this.studies = workspace.studies();
        this.trial = handIn();
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        List<String> faults;
        try (Workspace workspace = LoadWorkspace.open(folder)) {
            LoadWorkspace.fill(workspace);
            try (WebServer server = WebServer.start(workspace, Methods.builtIn(), 0)) {
                LoadRun run = new LoadRun(workspace, server);
                run.walk();
                faults = run.faults;
            }
        }
        faults.forEach(System.err::println);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(faults.size() + " routes are not as they should be");
        }
    }

    private void walk() {
        System.out.println("|   p50 |   p95 |   p99 | kB | page |");
        System.out.println("|------:|------:|------:|---:|------|");
        for (String route : server.routes()) {
            if (route.startsWith("GET ") && !OF_A_PLAN.matcher(route).find()) {
                time(route.substring("GET ".length()));
            }
        }
    }

    private void time(String path) {
        if (!PARAMETER.matcher(path).results().allMatch(it -> isKnown(it.group(1)))) {
            faults.add(path + ": there is no sample for it");
            return;
        }
        boolean file = FILE.matcher(path).find();
        int warming = file ? 5 : path.contains("{study}") ? studies.size() : 20;
        for (int study = 0; study < warming; study++) {
            if (answers(path, study)) {
                ask(filled(path, study));
            }
        }
        int asked = file ? ASKED / 10 : ASKED;
        double[] ms = new double[asked];
        HttpResponse<byte[]> answer = null;
        for (int i = 0; i < asked; i++) {
            int study = random.nextInt(studies.size());
            while (!answers(path, study)) {
                study = random.nextInt(studies.size());
            }
            String filled = filled(path, study);
            long start = System.nanoTime();
            answer = ask(filled);
            ms[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(ms);
        System.out.println("| %s | %s | %s | %s | %s%s |"
                .formatted(
                        tenths(ms[asked / 2]),
                        tenths(ms[asked * 95 / 100]),
                        tenths(ms[asked * 99 / 100]),
                        answer == null ? 0 : answer.body().length / 1000,
                        path,
                        file ? " (a file to keep)" : ""));
        if (!file && !(ms[asked * 95 / 100] <= MOST_MS)) {
            faults.add("%s: the 95th percentile is %s ms, must be %s ms or less"
                    .formatted(path, tenths(ms[asked * 95 / 100]), MOST_MS));
        }
    }

    private static double tenths(double ms) {
        return Math.rint(10 * ms) / 10;
    }

    /** Curves are there in some studies alone. */
    private static boolean answers(String path, int study) {
        return !path.contains("/curves") || LoadWorkspace.hasCurves(study);
    }

    private static boolean isKnown(String parameter) {
        return List.of("study", "code", "method", "photo", "instrument", "trial", "page", "picture")
                .contains(parameter);
    }

    private String filled(String path, int study) {
        StudyName name = studies.get(study);
        Matcher matcher = PARAMETER.matcher(path);
        return matcher.replaceAll(it -> switch (it.group(1)) {
                    case "study" -> name.id().toString();
                    case "code" -> LoadWorkspace.code(random.nextInt(LoadWorkspace.SPECIMENS));
                    case "method" -> "tensile";
                    case "photo" -> photo(name);
                    case "instrument" ->
                        workspace.instruments().all().get(0).id().toString();
                    case "trial" -> trial;
                    case "page" -> "verdicts";
                    case "picture" -> "report.png";
                    default -> throw new IllegalStateException(it.group());
                })
                + QUERIES.getOrDefault(path, "");
    }

    private String photo(StudyName study) {
        return workspace
                .typing()
                .test(study, "tensile")
                .specimen(LoadWorkspace.code(0))
                .orElseThrow()
                .photos()
                .get(0)
                .file()
                .sha256();
    }

    private HttpResponse<byte[]> ask(String path) {
        HttpResponse<byte[]> answer = send(HttpRequest.newBuilder(uri(path)));
        if (answer.statusCode() >= 400) {
            throw new IllegalStateException(path + " answered " + answer.statusCode());
        }
        return answer;
    }

    private String handIn() {
        String boundary = "----fittings";
        String body =
                "--%s\r\nContent-Disposition: form-data; name=\"table\"; filename=\"bars.csv\""
                        + "\r\n\r\n%s\r\n--%s--\r\n";
        String address = server.address().toString();
        HttpResponse<byte[]> answer = send(HttpRequest.newBuilder(uri("/trials"))
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .header("Origin", address.substring(0, address.length() - 1))
                .POST(BodyPublishers.ofString(body.formatted(boundary, BARS, boundary))));
        String place = answer.headers().firstValue("Location").orElseThrow();
        return URLEncoder.encode(
                place.substring(place.lastIndexOf('/') + 1), StandardCharsets.UTF_8);
    }

    private URI uri(String path) {
        return server.address().resolve(path);
    }

    private HttpResponse<byte[]> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
