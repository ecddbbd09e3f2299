package org.twinbar.study;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.datapackage.DataPackage;
import org.twinbar.exchange.datapackage.DataTable;
import org.twinbar.exchange.datapackage.Licence;
import org.twinbar.exchange.datapackage.PackageWriter;
import org.twinbar.method.Methods;
import org.twinbar.store.Digest;
import org.twinbar.store.Entry;
import org.twinbar.store.Store;
import org.twinbar.store.StoreException;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.packed.CalculatedTables;
import org.twinbar.study.packed.EntriesAsTable;
import org.twinbar.study.packed.PackageReadme;
import org.twinbar.study.table.Upload;

/**
 * Data packages out of a workspace and into it.
 *
 * <p>A package holds a study's entries and files, from which everything is calculated again by
 * whoever gets it; and what was calculated, so that it can be read without Twinbar and compared.
 */
public final class Packages {

    private final Store store;
    private final Shelf shelf;
    private final Methods methods;
    private final String program;

    Packages(Store store, Shelf shelf, Methods methods, String program) {
        this.store = store;
        this.shelf = shelf;
        this.methods = methods;
        this.program = program;
    }

    /**
     * Writes a study's package: a zip where the name ends in {@code .zip}, else a folder.
     *
     * @param judged the study as it stands now
     * @throws InputException where it can't be written there
     */
    public void write(StudyName study, JudgedStudy judged, Optional<Licence> licence, Path to) {
        DataPackage made = made(study, judged, licence);
        try {
            if (!to.toString().toLowerCase(Locale.ROOT).endsWith(".zip")) {
                PackageWriter.folder(made, to);
                return;
            }
            Path folder = to.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            Path part = to.resolveSibling(to.getFileName() + ".part");
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part))) {
                PackageWriter.zip(made, out);
            }
            Files.move(part, to, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new InputException("the package can't be written to %s: %s"
                    .formatted(to, e.getClass().getSimpleName()));
        }
    }

    /** Returns a study's package as one zip. */
    public byte[] zip(StudyName study, JudgedStudy judged, Optional<Licence> licence) {
        ByteArrayOutputStream zip = new ByteArrayOutputStream();
        try {
            PackageWriter.zip(made(study, judged, licence), zip);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return zip.toByteArray();
    }

    private DataPackage made(StudyName study, JudgedStudy judged, Optional<Licence> licence) {
        List<Entry> entries = entries(study);
        List<DataTable> tables = new ArrayList<>();
        tables.add(EntriesAsTable.of(entries));
        tables.addAll(CalculatedTables.of(judged));
        ObjectNode own = JsonNodeFactory.instance.objectNode();
        own.put("format", PackagedStudy.FORMAT);
        own.put("study", study.id().toString());
        own.put("program", judged.maker().program());
        own.put("seed", judged.maker().seed());
        own.put("invented", judged.invented());
        judged.making()
                .seal()
                .ifPresent(seal -> own.putObject("sealedPlan")
                        .put("sha256", seal.sha256())
                        .put("at", seal.when().toOffsetDateTime().toString())
                        .put("by", seal.who()));
        Set<String> people = new LinkedHashSet<>();
        entries.forEach(entry -> people.add(entry.who()));
        List<DataPackage.RawFile> files = new ArrayList<>(ownMethods(judged));
        files.addAll(rawFiles(entries));
        return new DataPackage(
                judged.name(),
                study.id().toString(),
                judged.question(),
                PackageReadme.description(judged),
                List.copyOf(people),
                licence,
                new DataPackage.Own(PackagedStudy.KEY, own),
                PackageReadme.of(judged, licence, tables),
                tables,
                files);
    }

    /** Returns the entries on a study, then those on each instrument that its tests name. */
    private List<Entry> entries(StudyName study) {
        List<Entry> entries = new ArrayList<>(store.about(study.id().toString()));
        State.of(entries, shelf).tests().stream()
                .flatMap(test -> test.sheet().instrument().values().stream())
                .flatMap(name -> shelf.find(name).stream())
                .map(instrument -> instrument.id().toString())
                .distinct()
                .forEach(id -> entries.addAll(store.about(id)));
        return entries;
    }

    private List<DataPackage.RawFile> rawFiles(List<Entry> entries) {
        List<DataPackage.RawFile> files = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (KeptFile file : EntriesAsTable.files(entries)) {
            String wanted = "raw/" + plain(file.name());
            String path = wanted;
            for (int number = 2; !taken.add(path.toLowerCase(Locale.ROOT)); number++) {
                int dot = wanted.lastIndexOf('.');
                int end = dot > wanted.lastIndexOf('/') ? dot : wanted.length();
                path = wanted.substring(0, end) + "-" + number + wanted.substring(end);
            }
            Path place = store.files().verified(new Digest(file.sha256()));
            files.add(new DataPackage.RawFile(
                    path, file.name(), file.sha256(), file.bytes(), Source.of(file.name(), place)));
        }
        return files;
    }

    /** Returns a name that is a path on every system and leads nowhere else. */
    static String plain(String name) {
        List<String> parts = new ArrayList<>();
        for (String part : name.split("[/\\\\]+")) {
            String plain = part.replaceAll("[^\\p{L}\\p{N}._ ()+-]", "_")
                    .replaceAll("\\.{2,}", "_")
                    .replaceAll("^[.\\s]+|[.\\s]+$", "");
            if (!plain.isEmpty()) {
                parts.add(plain);
            }
        }
        return parts.isEmpty() ? "file" : String.join("/", parts);
    }

    /**
     * A person's own methods lie in the workspace as files; those that the study uses go with it.
     */
    private List<DataPackage.RawFile> ownMethods(JudgedStudy judged) {
        List<DataPackage.RawFile> files = new ArrayList<>();
        for (Path file : methodFiles()) {
            String name = OwnMethods.read(file).description().name();
            if (judged.method(name).isPresent()) {
                byte[] bytes = Upload.of(file.toString(), file).bytes();
                String title = file.getFileName().toString();
                files.add(new DataPackage.RawFile(
                        PackagedStudy.METHODS + plain(title),
                        title,
                        Digest.of(bytes).hex(),
                        bytes.length,
                        Source.of(title, bytes)));
            }
        }
        return files;
    }

    private Map<String, byte[]> methodFilesByName() {
        Map<String, byte[]> files = new HashMap<>();
        for (Path file : methodFiles()) {
            files.put(
                    OwnMethods.read(file).description().name(),
                    Upload.of(file.toString(), file).bytes());
        }
        return files;
    }

    private List<Path> methodFiles() {
        Path folder = methodFolder();
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(".toml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new InputException("%s: can't be read".formatted(folder));
        }
    }

    private Path methodFolder() {
        return store.folder().resolve("methods");
    }

    /**
     * Brings the study of a package into the workspace: its entries and files as they are, its
     * verdicts judged anew. One that is here already gets the entries that it lacks.
     *
     * @throws InputException where it can't be calculated, or another study has its name, or it is
     *     here with other entries; nothing was written then
     */
    public JudgedStudy bring(PackagedStudy packaged) {
        Methods all = packaged.among(methods, methodFilesByName());
        State state = packaged.state();
        requireAgreement(packaged, state.head().name());
        JudgedStudy judged = Judging.judge(state, all, packaged::bytes, program, Progress.SILENT);
        keepMethods(packaged);
        store.files().keepAll(packaged.files().stream().map(packaged::bytes));
        try {
            store.append(packaged.entries());
        } catch (StoreException e) {
            throw new InputException("%s: %s".formatted(packaged.place(), e.getMessage()));
        }
        return judged;
    }

    /** Nothing may be entered here that the package knows nothing of, and does not come before. */
    private void requireAgreement(PackagedStudy packaged, String name) {
        for (String subject : packaged.subjects()) {
            List<Entry> here = store.about(subject);
            List<String> ours =
                    here.stream().map(entry -> entry.id().toString()).toList();
            List<String> theirs = packaged.about(subject).stream()
                    .map(entry -> entry.id().toString())
                    .toList();
            int common = Math.min(ours.size(), theirs.size());
            if (!ours.subList(0, common).equals(theirs.subList(0, common))) {
                throw new InputException(
                        "the study '%s' is here already, and since then other things"
                                        .formatted(name)
                                + " were entered here than in the package");
            }
        }
        boolean taken = store.of(Aspect.STUDY.word()).stream()
                .filter(entry -> !entry.subject().equals(packaged.study().toString()))
                .map(entry -> State.of(store.about(entry.subject()), shelf))
                .anyMatch(it -> it.head().name().equals(name));
        if (taken) {
            throw new InputException("there is a study '%s' in %s already; bring this one into"
                            .formatted(name, store.folder())
                    + " another workspace");
        }
        for (KeptInstrument brought : packaged.shelf().all()) {
            if (shelf.find(brought.name())
                    .filter(it -> !it.id().equals(brought.id()))
                    .isPresent()) {
                throw new InputException(
                        "there is another instrument '%s' in %s already; bring this"
                                        .formatted(brought.name(), store.folder())
                                + " study into another workspace");
            }
        }
    }

    private void keepMethods(PackagedStudy packaged) {
        for (PackagedStudy.Own own : packaged.own()) {
            if (methods.named(own.name()).isEmpty()) {
                Path file = methodFolder().resolve(plain(own.file()));
                try {
                    Files.createDirectories(methodFolder());
                    Files.write(file, own.bytes(), java.nio.file.StandardOpenOption.CREATE_NEW);
                } catch (IOException e) {
                    throw new InputException(
                            "the method '%s' can't be written to %s".formatted(own.name(), file));
                }
            }
        }
    }
}
