package org.twinbar.exchange.datapackage;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.twinbar.exchange.InputException;

/** The files of a package, by their paths in it. */
sealed interface Contents extends AutoCloseable {

    Pattern LEADS_OUT = Pattern.compile("(^|/)\\.\\.(/|$)|^[/~]|\\\\|:|\\p{Cntrl}");

    Set<String> paths();

    /** Opens a file that is among the paths; it gives no more bytes than it says it has. */
    InputStream open(String path) throws IOException;

    @Override
    void close();

    /** Whether a path could name something outside the package. */
    static boolean leadsOut(String path) {
        return LEADS_OUT.matcher(path).find();
    }

    /** @throws InputException where it is neither a folder nor a zip, or breaks a limit */
    static Contents of(Path file, Limits limits) {
        if (Files.isDirectory(file)) {
            return new Folder(file, Folder.within(file, limits));
        }
        if (!Files.isRegularFile(file)) {
            throw new InputException("there is no package %s".formatted(file));
        }
        try {
            ZipFile zip = new ZipFile(file.toFile());
            try {
                return new Zip(file, zip, Zip.within(file, zip, limits));
            } catch (RuntimeException | IOException e) {
                zip.close();
                throw e;
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new InputException(
                    "%s is neither a folder nor a zip that can be read".formatted(file));
        }
    }

    private static void requireAllowed(Path file, String path, long bytes, Limits limits) {
        if (leadsOut(path)) {
            throw new InputException("%s: the name '%s' leads out of the package"
                    .formatted(file, path.replaceAll("\\p{Cntrl}", "?")));
        }
        if (bytes > limits.fileBytes()) {
            throw new InputException("%s: %s has %s bytes, the limit of one file is %s MiB"
                    .formatted(file, path, bytes, limits.fileBytes() >> 20));
        }
    }

    private static InputException tooMany(Path file, Limits limits) {
        return new InputException("%s holds more than %s files, the limit of a package"
                .formatted(file, limits.files()));
    }

    private static void requireAll(Path file, long all, Limits limits) {
        if (all > limits.allBytes()) {
            throw new InputException("%s holds %s MiB, the limit of a package is %s MiB"
                    .formatted(file, all >> 20, limits.allBytes() >> 20));
        }
    }

    /** A zip, which is never unpacked to a disk. */
    record Zip(Path file, ZipFile zip, Map<String, ZipEntry> entries) implements Contents {

        static Map<String, ZipEntry> within(Path file, ZipFile zip, Limits limits)
                throws IOException {
            if (zip.size() > limits.files()) {
                throw tooMany(file, limits);
            }
            Map<String, ZipEntry> entries = new HashMap<>();
            long all = 0;
            for (ZipEntry entry : Collections.list(zip.entries())) {
                requireAllowed(file, entry.getName(), entry.getSize(), limits);
                if (!entry.isDirectory()) {
                    if (entries.put(entry.getName(), entry) != null) {
                        throw new InputException(
                                "%s holds '%s' twice".formatted(file, entry.getName()));
                    }
                    all += Math.max(0, entry.getSize());
                }
            }
            requireAll(file, all, limits);
            long packed = Math.max(1, Files.size(file));
            if (all > Limits.DENSE_UP_TO && all / packed > limits.ratio()) {
                throw new InputException(
                        "%s would grow to %s times its size when unpacked, the limit is %s times"
                                .formatted(file, all / packed, limits.ratio()));
            }
            return entries;
        }

        @Override
        public Set<String> paths() {
            return entries.keySet();
        }

        @Override
        public InputStream open(String path) throws IOException {
            ZipEntry entry = entries.get(path);
            if (entry == null) {
                throw new IOException("no such file");
            }
            return new NoMoreThan(zip.getInputStream(entry), entry.getSize(), file, path);
        }

        @Override
        public void close() {
            try {
                zip.close();
            } catch (IOException e) {
                // It was only read.
            }
        }
    }

    /** A folder. */
    record Folder(Path file, Map<String, Path> files) implements Contents {

        static Map<String, Path> within(Path folder, Limits limits) {
            Map<String, Path> files = new HashMap<>();
            try (Stream<Path> all = Files.walk(folder)) {
                Path root = folder.toRealPath();
                long bytes = 0;
                for (Path each : (Iterable<Path>) all::iterator) {
                    if (Files.isRegularFile(each)) {
                        String path = folder.relativize(each).toString().replace('\\', '/');
                        requireAllowed(folder, path, Files.size(each), limits);
                        if (!each.toRealPath().startsWith(root)) {
                            throw new InputException("%s: the name '%s' leads out of the package"
                                    .formatted(folder, path));
                        }
                        bytes += Files.size(each);
                        files.put(path, each);
                        if (files.size() > limits.files()) {
                            throw tooMany(folder, limits);
                        }
                    }
                }
                requireAll(folder, bytes, limits);
                return files;
            } catch (IOException | java.io.UncheckedIOException e) {
                throw new InputException("the folder %s can't be read".formatted(folder));
            }
        }

        @Override
        public Set<String> paths() {
            return files.keySet();
        }

        @Override
        public InputStream open(String path) throws IOException {
            Path place = files.get(path);
            if (place == null) {
                throw new IOException("no such file");
            }
            return Files.newInputStream(place);
        }

        @Override
        public void close() {
            // Nothing is held open.
        }
    }

    /** A zip may hold more than its list of contents says; then it is refused. */
    final class NoMoreThan extends FilterInputStream {
        private final long most;
        private final Path file;
        private final String path;
        private long read;

        NoMoreThan(InputStream in, long most, Path file, String path) {
            super(in);
            this.most = most;
            this.file = file;
            this.path = path;
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            count(one < 0 ? 0 : 1);
            return one;
        }

        @Override
        public int read(byte[] room, int from, int length) throws IOException {
            int some = super.read(room, from, length);
            count(Math.max(0, some));
            return some;
        }

        private void count(int more) {
            read += more;
            if (read > most) {
                throw new InputException("%s: %s holds more than the %s bytes that the zip says"
                        .formatted(file, path, most));
            }
        }
    }

    /** Returns the paths that lie in a folder of the package, for hints. */
    default List<String> sorted() {
        return paths().stream().sorted().toList();
    }
}
