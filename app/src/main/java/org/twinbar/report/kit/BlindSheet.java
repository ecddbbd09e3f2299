package org.twinbar.report.kit;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.report.Fonts;
import org.twinbar.report.Pdf;
import org.twinbar.report.Sheet;
import org.twinbar.report.Theme;
import org.twinbar.study.Still;

/**
 * Stills of all groups, shuffled and numbered, for viewers to vote on; which is which lies in a
 * file apart.
 *
 * <p>The order follows from the study's seed and the photos' digests: the same study gives the same
 * sheet, and nobody can tell it from the seed alone.
 */
public final class BlindSheet {

    /** What is asked of who votes; as ratings, so that a specimen has a median. */
    static final String QUESTION =
            "How good does each look? Rate every still from 1 (poor) to 5 (good).";

    private static final String HOW =
            "Each specimen counts once, by the median of its votes, however"
                    + " many vote: a hundred votes on one specimen tell nothing of the next one.";
    private static final int ACROSS = 5;
    private static final int DOWN = 2;
    private static final int ON_A_PAPER = 12;
    private static final TemplateEngine TEMPLATES =
            TemplateEngine.createPrecompiled(ContentType.Html);

    private final Sheet sheet;
    private final List<Drawn> drawn;
    private final String why;

    /** A still with its place on the sheet; drawn when asked for, since squares are large. */
    private record Drawn(int number, Still still) {
        BufferedImage square() {
            return Square.of(still.bytes().get()).orElseThrow();
        }
    }

    private BlindSheet(Sheet sheet, List<Drawn> drawn, String why) {
        this.sheet = sheet;
        this.drawn = drawn;
        this.why = why;
    }

    static BlindSheet of(Sheet sheet, List<Still> stills, long seed) {
        List<Still> readable = new ArrayList<>();
        List<String> unreadable = new ArrayList<>();
        for (Still still : shuffled(stills, seed)) {
            if (Square.of(still.bytes().get()).isPresent()) {
                readable.add(still);
            } else {
                unreadable.add(still.code());
            }
        }
        Set<String> groups = new TreeSet<>();
        readable.forEach(it -> groups.add(it.group()));
        String unread = unreadable.isEmpty()
                ? ""
                : " The photos of %s are of a kind that can't be drawn here; hand them in as JPEG or PNG."
                        .formatted(String.join(", ", unreadable));
        if (groups.size() < 2) {
            return new BlindSheet(
                    sheet,
                    List.of(),
                    "There is no sheet to vote on: it needs photos of specimens of two groups, and"
                            + " there are %s."
                                    .formatted(
                                            groups.isEmpty()
                                                    ? "none"
                                                    : "only those of '%s'"
                                                            .formatted(groups.iterator()
                                                                    .next()))
                            + " Photograph each specimen from the same place, in the same light."
                            + unread);
        }
        List<Drawn> drawn = new ArrayList<>();
        for (int i = 0; i < readable.size(); i++) {
            drawn.add(new Drawn(i + 1, readable.get(i)));
        }
        return new BlindSheet(sheet, drawn, unread.strip());
    }

    private static List<Still> shuffled(List<Still> stills, long seed) {
        List<Still> order = new ArrayList<>(stills);
        order.sort(
                Comparator.comparing((Still it) -> it.file().sha256()).thenComparing(Still::code));
        long mixed = seed;
        for (Still still : order) {
            mixed = 31 * mixed + Long.parseUnsignedLong(still.file().sha256().substring(0, 16), 16);
        }
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(mixed);
        for (int last = order.size() - 1; last > 0; last--) {
            int other = random.nextInt(last + 1);
            Still moved = order.set(last, order.get(other));
            order.set(other, moved);
        }
        return order;
    }

    List<KitFile> files(List<Palette> palettes) {
        if (drawn.isEmpty()) {
            return List.of(KitFile.text("blind/why-there-is-none.txt", why + "\n"));
        }
        List<KitFile> files = new ArrayList<>();
        for (Drawn each : drawn) {
            files.add(new KitFile(
                    String.format(Locale.ROOT, "blind/still-%02d.jpg", each.number()),
                    () -> Square.numbered(each.square(), each.number())));
        }
        for (int page = 0; page < pages(); page++) {
            List<Drawn> on = on(page);
            for (Palette palette : palettes) {
                files.add(new KitFile(
                        "blind/%s-%s.png".formatted(name(page), palette.word()),
                        () -> picture(on, palette)));
            }
        }
        files.add(new KitFile("blind/sheet.pdf", this::paper));
        files.add(KitFile.text("blind/votes.csv", votes()));
        files.add(KitFile.text("blind/how-to-vote.txt", how()));
        files.add(KitFile.text("blind-key.csv", key()));
        return files;
    }

    Map<String, String> alternatives() {
        Map<String, String> alternatives = new TreeMap<>();
        for (int page = 0; page < pages(); page++) {
            List<Drawn> on = on(page);
            alternatives.put(
                    "blind/" + name(page),
                    "Stills %s to %s of specimens, shuffled, without their groups. %s"
                            .formatted(
                                    on.get(0).number(), on.get(on.size() - 1).number(), QUESTION));
        }
        return alternatives;
    }

    private int pages() {
        return (drawn.size() + ACROSS * DOWN - 1) / (ACROSS * DOWN);
    }

    private List<Drawn> on(int page) {
        int from = page * ACROSS * DOWN;
        return drawn.subList(from, Math.min(drawn.size(), from + ACROSS * DOWN));
    }

    private static String name(int page) {
        return "sheet-" + (page + 1);
    }

    private byte[] picture(List<Drawn> on, Palette palette) {
        Poster poster = new Poster(Frame.WIDE);
        double width = Frame.WIDE.width() - 2.0 * Frame.MARGIN;
        double top =
                poster.say(QUESTION, Frame.MARGIN, 90, width, 90, Fonts.Weight.BOLD, Theme.INK);
        poster.foot(sheet);
        BufferedImage image = Bitmap.drawn(
                palette.resolved(poster.svg()), Frame.WIDE.width(), Frame.WIDE.height());
        int across = Math.min(ACROSS, on.size());
        int down = (on.size() + ACROSS - 1) / ACROSS;
        double gap = 40;
        double room = poster.bottom() - top - 60;
        double side =
                Math.min((width - (across - 1) * gap) / across, (room - (down - 1) * gap) / down);
        double used = down * side + (down - 1) * gap;
        double left = (Frame.WIDE.width() - across * side - (across - 1) * gap) / 2;
        Graphics2D canvas = image.createGraphics();
        try {
            canvas.setRenderingHint(
                    RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            for (int i = 0; i < on.size(); i++) {
                double x = left + i % ACROSS * (side + gap);
                double y = top
                        + 20
                        + Math.max(0, room - used) / 2
                        + (double) (i / ACROSS) * (side + gap);
                canvas.drawImage(
                        on.get(i).square(), (int) x, (int) y, (int) side, (int) side, null);
                Square.number(canvas, on.get(i).number(), x, y, side);
            }
        } finally {
            canvas.dispose();
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream(4_000_000);
        try {
            ImageIO.write(image, "png", png);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return png.toByteArray();
    }

    /** One still on the printed page, with its picture inside. */
    public record OnPaper(int number, String picture) {}

    private byte[] paper() {
        List<List<OnPaper>> pages = new ArrayList<>();
        for (int from = 0; from < drawn.size(); from += ON_A_PAPER) {
            pages.add(drawn.subList(from, Math.min(drawn.size(), from + ON_A_PAPER)).stream()
                    .map(it -> new OnPaper(
                            it.number(),
                            "data:image/jpeg;base64,"
                                    + Base64.getEncoder()
                                            .encodeToString(
                                                    Square.numbered(it.square(), it.number()))))
                    .toList());
        }
        StringOutput page = new StringOutput(1_000_000);
        TEMPLATES.render(
                "report/blind.jte",
                Map.of(
                        "pages",
                        pages,
                        "question",
                        QUESTION,
                        "how",
                        HOW,
                        "invented",
                        sheet.invented()),
                page);
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        try {
            Pdf.print(Theme.onPaper(page.toString()), pdf);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return pdf.toByteArray();
    }

    private String votes() {
        StringBuilder votes = new StringBuilder("still,voter,vote\n");
        drawn.forEach(it -> votes.append(it.number()).append(",,\n"));
        return votes.toString();
    }

    private String key() {
        StringBuilder key = new StringBuilder("still,specimen,group,photo_sha256\n");
        drawn.forEach(it -> key.append("%s,%s,%s,%s\n"
                .formatted(
                        it.number(),
                        quoted(it.still().code()),
                        quoted(it.still().group()),
                        it.still().file().sha256())));
        return key.toString();
    }

    private static String quoted(String text) {
        return text.matches("[^,\"\n\r]*") ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }

    private String how() {
        return QUESTION + "\n\n" + HOW + "\n\n"
                + "Show the stills or the sheet, and keep blind-key.csv to yourself until all have"
                + " voted. Write the votes into votes.csv, a row for each vote; who voted may be"
                + " any name or number. Then:\n\n"
                + "  twinbar votes blind/votes.csv --key blind-key.csv\n"
                + (why.isEmpty() ? "" : "\n" + why + "\n");
    }
}
