package org.twinbar.report;

import java.util.List;
import java.util.Optional;

/**
 * A report in its words and pictures, ready to be set: what templates see, and nothing more.
 *
 * @param title the question that the report answers
 * @param about one line on what was treated, how many specimens, in how many runs
 * @param origin whether the data were measured
 * @param claims in the order of the study
 * @param sections how it was found, after the claims
 * @param made one line on what made the report
 */
public record Sheet(
        String title,
        String about,
        Origin origin,
        List<Claim> claims,
        List<Section> sections,
        String made) {

    public Sheet {
        claims = List.copyOf(claims);
        sections = List.copyOf(sections);
    }

    /** Whether somebody measured the data. */
    public enum Origin {
        MEASURED,
        INVENTED
    }

    public boolean invented() {
        return origin == Origin.INVENTED;
    }

    /** Returns the same with another line on what made it. */
    Sheet made(String words) {
        return new Sheet(title, about, origin, claims, sections, words);
    }

    /** Returns every answer of every claim, in order. */
    public List<Answer> answers() {
        return claims.stream().flatMap(claim -> claim.answers().stream()).toList();
    }

    /**
     * What somebody says the treatment does, and what was found; one claim may have several
     * answers.
     */
    public record Claim(String quoted, String saidBy, List<Answer> answers) {
        public Claim {
            answers = List.copyOf(answers);
        }
    }

    /**
     * The answer to one question of a claim.
     *
     * @param anchor where it stands in the page
     * @param heading the question in few words
     * @param scope what it was asked of, such as "pulled flat"; may be empty
     * @param verdict its word
     * @param mark small drawing of the verdict, SVG
     * @param sentence what was found, how sure, on what
     * @param brief shorter form for the list of claims
     * @param pictures the first two matter most
     * @param items reasons, limits, what would change the verdict
     */
    public record Answer(
            String anchor,
            String heading,
            String scope,
            String verdict,
            Optional<String> mark,
            String sentence,
            String brief,
            List<Picture> pictures,
            List<Item> items) {
        public Answer {
            pictures = List.copyOf(pictures);
            items = List.copyOf(items);
        }

        Answer with(List<Item> others) {
            return new Answer(
                    anchor, heading, scope, verdict, mark, sentence, brief, pictures, others);
        }
    }

    /** A picture as SVG with the words beneath it. */
    public record Picture(String svg, String caption) {}

    /** A term and what is to be said of it. */
    public record Item(String term, List<String> paragraphs) {
        public Item {
            paragraphs = List.copyOf(paragraphs);
        }

        static Item of(String term, String... paragraphs) {
            return new Item(term, List.of(paragraphs));
        }
    }

    /** A section of how it was found. */
    public record Section(String anchor, String heading, List<Block> blocks) {
        public Section {
            blocks = List.copyOf(blocks);
        }
    }

    /** What a section is made of. */
    public sealed interface Block {

        /** A heading within the section. */
        record Heading(String text) implements Block {}

        /** A paragraph. */
        record Paragraph(String text) implements Block {}

        /** Sentences, each a line of its own; a warning stands out. */
        record Sentences(List<String> texts, Weight weight) implements Block {
            public Sentences {
                texts = List.copyOf(texts);
            }
        }

        /** Terms and what is to be said of them. */
        record Items(List<Item> items) implements Block {
            public Items {
                items = List.copyOf(items);
            }
        }

        /** A table; numbers stand right. */
        record Table(String caption, List<Column> columns, List<List<String>> rows)
                implements Block {
            public Table {
                columns = List.copyOf(columns);
                rows = rows.stream().map(List::copyOf).toList();
            }
        }

        /** Pictures side by side. */
        record Pictures(List<Picture> pictures) implements Block {
            public Pictures {
                pictures = List.copyOf(pictures);
            }
        }
    }

    /** How much sentences weigh. */
    public enum Weight {
        PLAIN,
        ATTENTION
    }

    /** A column of a table. */
    public record Column(String header, Kind kind) {

        private static final int LONGEST_NUMBER = 26;

        /** How its cells stand. */
        public enum Kind {
            NAME,
            TEXT,
            NUMBER,
            CODE;

            public String css() {
                return name().toLowerCase(java.util.Locale.ROOT);
            }
        }

        /**
         * Returns how a cell stands; a reason in a column of numbers may run over several lines.
         */
        public String css(String cell) {
            boolean reason = kind == Kind.NUMBER && cell.length() > LONGEST_NUMBER;
            return reason ? "reason" : kind.css();
        }

        static Column name(String header) {
            return new Column(header, Kind.NAME);
        }

        static Column text(String header) {
            return new Column(header, Kind.TEXT);
        }

        static Column number(String header) {
            return new Column(header, Kind.NUMBER);
        }

        static Column code(String header) {
            return new Column(header, Kind.CODE);
        }
    }
}
