package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.datapackage.OpenPackage;
import org.twinbar.study.PackagedStudy;
import org.twinbar.study.Recheck;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.JudgedStudy;

/**
 * "Does somebody's study hold?": a data package is handed in, calculated again, and every
 * difference listed. Decided there: whether to believe it, and whether to bring it into this
 * workspace.
 */
final class PackagePages implements AutoCloseable {

    private static final String PAGE = "/packages";

    /** Packages that were checked and may yet be brought in; the oldest are let go of. */
    private static final int MOST = 4;

    private final Workspace workspace;
    private final Map<String, Path> checked = new LinkedHashMap<>();

    PackagePages(Workspace workspace) {
        this.workspace = workspace;
    }

    void routes(RoutesConfig routes) {
        routes.get(PAGE, request -> show(request, Optional.empty(), "", ""));
        routes.post(PAGE + "/check", this::check);
        routes.post(PAGE + "/bring", this::bring);
    }

    private static void show(
            Context request, Optional<Recheck> found, String token, String trouble) {
        Pages.show(request, "packages", Map.of("found", found, "token", token, "trouble", trouble));
    }

    private void check(Context request) {
        String token = UUID.randomUUID().toString();
        Path file = received(request);
        try {
            Recheck found = with(file, open -> {
                if (!PackagedStudy.is(open)) {
                    throw new InputException(
                            "this package was made by hand and holds no verdicts that could be"
                                    + " checked; hand its tables in on the first page");
                }
                return Recheck.of(open, workspace.methods(), workspace.program());
            });
            keep(token, file);
            show(request, Optional.of(found), token, "");
        } catch (InputException e) {
            remove(file);
            request.status(400);
            show(request, Optional.empty(), "", Words.sentence(e));
        }
    }

    private void bring(Context request) {
        String token = Form.of(request).text("package");
        Path file = kept(token);
        try {
            JudgedStudy brought =
                    with(file, open -> workspace.packages().bring(PackagedStudy.verified(open)));
            request.redirect(Links.study(workspace.study(brought.name())), HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            show(request, Optional.empty(), "", Words.sentence(e));
        }
    }

    /** Where a file lies on this machine tells nobody anything: its name does. */
    private static <T> T with(Path file, Function<OpenPackage, T> reader) {
        try (OpenPackage open = OpenPackage.of(file)) {
            return reader.apply(open);
        } catch (InputException e) {
            throw new InputException(String.valueOf(e.getMessage())
                    .replace(file.getParent() + file.getFileSystem().getSeparator(), ""));
        }
    }

    private static Path received(Context request) {
        Optional<UploadedFile> file;
        try {
            file = request.uploadedFiles("package").stream()
                    .filter(it -> !it.filename().isBlank())
                    .findFirst();
        } catch (Exception e) {
            // The server throws what it likes for a form that is too large or broken off.
            throw Refusal.badRequest(
                    "The package could not be taken: it may have %s MB; the command line takes more."
                            .formatted(Received.LARGEST_FILE_MB));
        }
        UploadedFile handed = file.orElseThrow(
                () -> Refusal.badRequest("Choose a data package: a zip that was exported."));
        try (InputStream content = handed.content()) {
            Path kept = Files.createTempDirectory("twinbar-package").resolve("package.zip");
            Files.copy(content, kept);
            return kept;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private synchronized void keep(String token, Path file) {
        checked.put(token, file);
        while (checked.size() > MOST) {
            String oldest = checked.keySet().iterator().next();
            Path gone = checked.remove(oldest);
            if (gone != null) {
                remove(gone);
            }
        }
    }

    private synchronized Path kept(String token) {
        Path file = checked.get(token);
        if (file == null) {
            throw Refusal.badRequest("This package is no longer here; hand it in again.");
        }
        return file;
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
            Files.deleteIfExists(file.getParent());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public synchronized void close() {
        checked.values().forEach(PackagePages::remove);
        checked.clear();
    }
}
