package org.twinbar.study;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.datapackage.OpenPackage;
import org.twinbar.exchange.datapackage.Resource;
import org.twinbar.method.Methods;
import org.twinbar.method.TestMethod;
import org.twinbar.store.Entry;
import org.twinbar.store.StoreException;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.packed.EntriesAsTable;
import org.twinbar.study.table.Upload;

/**
 * A study as it lies in a package that Twinbar wrote: entries, the files that they name, and
 * methods of a person's own. What was calculated lies beside it, and is never taken over.
 */
public final class PackagedStudy {

    /** What Twinbar adds to the descriptor stands under this key. */
    static final String KEY = "twinbar";

    /** Raised where an older version could misread a package. */
    static final int FORMAT = 1;

    static final String METHODS = "methods/";

    private final OpenPackage open;
    private final List<Entry> entries;
    private final Map<String, Resource> byDigest;
    private final List<Own> own;

    private PackagedStudy(
            OpenPackage open, List<Entry> entries, Map<String, Resource> byDigest, List<Own> own) {
        this.open = open;
        this.entries = entries;
        this.byDigest = byDigest;
        this.own = own;
    }

    /**
     * A method of a person's own, as its file has it.
     *
     * @param file its name in the folder of methods
     */
    record Own(String file, byte[] bytes, TestMethod method) {
        String name() {
            return method.description().name();
        }
    }

    /** Whether a package holds a study with its entries, rather than tables made by hand. */
    public static boolean is(OpenPackage open) {
        return !open.own(KEY).isMissingNode();
    }

    /**
     * Reads the entries of a package; files are read when they are asked for.
     *
     * @throws InputException where its format is a later one, or an entry is none that a study of
     *     this version has
     */
    static PackagedStudy of(OpenPackage open) {
        int format = open.own(KEY).path("format").asInt(0);
        if (format != FORMAT) {
            throw new InputException("%s: its study is written in format %s, this version reads %s"
                    .formatted(open.place(), format, FORMAT));
        }
        Resource table = open.resource(EntriesAsTable.NAME)
                .orElseThrow(() -> new InputException(
                        "%s: the resource 'entries' is missing, which the study is made of"
                                .formatted(open.place())));
        String where = open.place() + ": " + table.path();
        List<Entry> entries = EntriesAsTable.read(where, table.columns(), open.rows(table));
        requireOneStudy(where, entries);
        Map<String, Resource> byDigest = new HashMap<>();
        List<Own> own = new ArrayList<>();
        for (Resource resource : open.resources()) {
            resource.hash()
                    .filter(it -> it.startsWith("sha256:"))
                    .ifPresent(it -> byDigest.putIfAbsent(it.substring(7), resource));
            if (resource.path().startsWith(METHODS) && resource.path().endsWith(".toml")) {
                own.add(own(open, resource));
            }
        }
        return new PackagedStudy(open, entries, byDigest, own);
    }

    /**
     * Reads a package that must be whole.
     *
     * @throws InputException as {@link #of}, and where the bytes of a file are not those that were
     *     packed, or not those that the study read
     */
    public static PackagedStudy verified(OpenPackage open) {
        for (Resource resource : open.resources()) {
            open.damage(resource).ifPresent(words -> {
                throw new InputException("%s: %s".formatted(open.place(), words));
            });
        }
        PackagedStudy study = of(open);
        for (KeptFile file : study.files()) {
            KeptFile found = KeptFile.of(study.source(file));
            if (!found.sha256().equals(file.sha256()) || found.bytes() != file.bytes()) {
                throw new InputException("%s: %s is not the file that was read: its SHA-256 is %s…"
                        .formatted(open.place(), file.name(), found.sha256().substring(0, 12)));
            }
        }
        return study;
    }

    private static Own own(OpenPackage open, Resource resource) {
        String file = resource.path().substring(METHODS.length());
        if (file.contains("/")) {
            throw new InputException("%s: the method '%s' must lie in %s itself"
                    .formatted(open.place(), resource.path(), METHODS));
        }
        byte[] bytes = open.source(resource).bytes();
        return new Own(
                file, bytes, OwnMethods.parse(file, new String(bytes, StandardCharsets.UTF_8)));
    }

    private static void requireOneStudy(String where, List<Entry> entries) {
        Set<String> studies = new LinkedHashSet<>();
        int heads = 0;
        for (Entry entry : entries) {
            if (!Aspect.isKnown(entry.aspect())) {
                throw new InputException("%s: entry %s is a '%s', which this version does not know"
                        .formatted(where, entry.id(), entry.aspect()));
            }
            if (!Aspect.isOfInstrument(entry.aspect())) {
                studies.add(entry.subject());
            }
            heads += entry.aspect().equals(Aspect.STUDY.word()) ? 1 : 0;
        }
        if (studies.size() != 1 || heads != 1) {
            throw new InputException("%s: holds %s studies, a package must hold one"
                    .formatted(where, heads == 1 ? studies.size() : heads));
        }
        for (Entry entry : entries) {
            boolean ofStudy = studies.contains(entry.subject());
            if (Aspect.isOfInstrument(entry.aspect()) == ofStudy || !isIdentity(entry.subject())) {
                throw new InputException("%s: entry %s is about neither the study nor an instrument"
                        .formatted(where, entry.id()));
            }
        }
    }

    private static boolean isIdentity(String text) {
        try {
            return UUID.fromString(text).toString().equals(text);
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    List<Entry> entries() {
        return entries;
    }

    /** Returns every file that the entries name. */
    List<KeptFile> files() {
        return EntriesAsTable.files(entries);
    }

    Path place() {
        return open.place();
    }

    UUID study() {
        return entries.stream()
                .filter(entry -> entry.aspect().equals(Aspect.STUDY.word()))
                .map(entry -> UUID.fromString(entry.subject()))
                .findFirst()
                .orElseThrow();
    }

    /** Returns what entries are about: the study, and the instruments that it names. */
    Set<String> subjects() {
        Set<String> subjects = new LinkedHashSet<>();
        entries.forEach(entry -> subjects.add(entry.subject()));
        return subjects;
    }

    List<Entry> about(String subject) {
        return entries.stream().filter(it -> it.subject().equals(subject)).toList();
    }

    /** Returns the instruments of the package; no other can be meant by its study. */
    KeptShelf shelf() {
        return new KeptShelf(new Ledger() {
            @Override
            public List<Entry> of(Aspect aspect) {
                return entries.stream()
                        .filter(it -> it.aspect().equals(aspect.word()))
                        .toList();
            }

            @Override
            public List<Entry> about(String subject) {
                return PackagedStudy.this.about(subject);
            }

            @Override
            public byte[] bytes(KeptFile file) {
                return PackagedStudy.this.bytes(file);
            }
        });
    }

    List<Own> own() {
        return own;
    }

    /** Returns what wrote the package. */
    String program() {
        return open.own(KEY).path("program").asText("an unknown program");
    }

    /** @throws InputException where the entries can't be understood */
    State state() {
        try {
            return State.of(about(study().toString()), shelf());
        } catch (StoreException e) {
            throw new InputException("%s: %s".formatted(open.place(), e.getMessage()));
        }
    }

    /**
     * Returns the methods at hand with those of the package among them.
     *
     * @param files of a person's own methods that are at hand, by the method's name
     * @throws InputException where one of them is called as another one that is there already
     */
    Methods among(Methods methods, Map<String, byte[]> files) {
        List<TestMethod> fresh = new ArrayList<>();
        for (Own each : own) {
            if (methods.named(each.name()).isEmpty()) {
                fresh.add(each.method());
            } else if (!Arrays.equals(files.get(each.name()), each.bytes())) {
                throw new InputException(
                        "%s brings a method '%s', and another one of that name is here already"
                                .formatted(open.place(), each.name()));
            }
        }
        return OwnMethods.among(methods, fresh);
    }

    /**
     * Returns what a file of the study holds.
     *
     * @throws InputException where the package lacks it
     */
    byte[] bytes(KeptFile file) {
        return Upload.of(source(file)).bytes();
    }

    Source source(KeptFile file) {
        Resource resource = byDigest.get(file.sha256());
        if (resource == null) {
            throw new InputException("%s: the package lacks the file '%s' with the SHA-256 %s…"
                    .formatted(open.place(), file.name(), file.sha256().substring(0, 12)));
        }
        return open.source(resource);
    }
}
