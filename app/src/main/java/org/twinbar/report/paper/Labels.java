package org.twinbar.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.exchange.InputException;

/** Labels for specimens, as PDF: the code in letters and squares, and what it belongs to. */
public final class Labels {

    /** Points of type in a millimetre. */
    private static final double POINTS = 72 / 25.4;

    /** Share of a letter's height that it is wide, on average, in bold. */
    private static final double WIDE = 0.68;

    private static final double MOST_SQUARES = 24;

    /** Side below which a telephone no longer tells squares apart (mm); from experience. */
    private static final double SMALLEST_SQUARE = 0.33;

    private Labels() {}

    /**
     * A label in its place.
     *
     * @param inSquares what its squares say
     * @param left from the edge (mm)
     * @param top from the edge (mm)
     * @param squares side of the squares (mm)
     * @param points size of the code
     * @param lines what stands below the code
     */
    public record Label(
            String code,
            String inSquares,
            double left,
            double top,
            double squares,
            double points,
            List<String> lines) {

        /** Returns how far the words stand below the label's upper edge (mm). */
        public double wordsTop(double height) {
            double tall = (points * 1.1 + lines.size() * 7 * 1.25) / POINTS;
            return Math.max(0, (height - tall) / 2);
        }

        /** Returns its squares, an SVG picture. */
        public String picture() {
            return Squares.svg(inSquares, squares);
        }
    }

    /**
     * Sets labels whose squares say the code.
     *
     * @param first place of the first label on its sheet, counted from 1, where some are used up
     * @throws InputException where there is no such place
     */
    public static byte[] pdf(Pieces pieces, LabelSheet sheet, int first) {
        return pdf(pieces, sheet, first, code -> code);
    }

    /**
     * Sets labels.
     *
     * @param first place of the first label on its sheet, counted from 1, where some are used up
     * @param address what squares say of a code; the code alone where a label is too small for it
     * @throws InputException where there is no such place
     */
    public static byte[] pdf(
            Pieces pieces, LabelSheet sheet, int first, UnaryOperator<String> address) {
        if (first < 1 || first > sheet.perPage()) {
            throw new InputException("the first label lies on a place from 1 to %s, not on %s"
                    .formatted(sheet.perPage(), first));
        }
        List<List<Label>> pages = new ArrayList<>();
        int at = first - 1;
        for (Piece piece : pieces.all()) {
            if (pages.isEmpty() || at % sheet.perPage() == 0) {
                pages.add(new ArrayList<>());
            }
            pages.get(pages.size() - 1)
                    .add(label(piece, pieces, sheet, at % sheet.perPage(), address));
            at++;
        }
        return Setting.pdf(Setting.filled(
                "report/paper/labels.jte",
                Map.of("sheet", sheet, "pages", pages, "title", "Labels: " + pieces.study())));
    }

    /** No group stands on a label: whoever tests reads it. */
    private static Label label(
            Piece piece,
            Pieces pieces,
            LabelSheet sheet,
            int place,
            UnaryOperator<String> address) {
        double inner = sheet.height() - 2;
        double squares = Math.min(MOST_SQUARES, Math.min(inner, sheet.width() * 0.45));
        double room = sheet.width() - squares - 5;
        double byWidth = room / (WIDE * piece.code().length());
        double letters = Math.min(Math.min(byWidth, inner * 0.5), 9);
        List<String> lines = inner - letters * 1.3 < 7
                ? List.of()
                : Stream.of(pieces.study(), where(piece))
                        .filter(it -> !it.isEmpty())
                        .map(it -> shortened(it, room))
                        .toList();
        return new Label(
                piece.code(),
                inSquares(piece.code(), squares, address),
                sheet.left(place),
                sheet.top(place),
                squares,
                letters * POINTS,
                lines);
    }

    private static String inSquares(String code, double side, UnaryOperator<String> address) {
        String text = address.apply(code);
        return side / Squares.drawn(text).size() < SMALLEST_SQUARE ? code : text;
    }

    private static String where(Piece piece) {
        return Stream.of(
                        piece.isPilot()
                                ? "pilot"
                                : piece.run().isEmpty() ? "" : "run " + piece.run(),
                        piece.position().isEmpty() ? "" : "place " + piece.position(),
                        piece.kind())
                .filter(it -> !it.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** Cuts a line to what fits in seven points. */
    private static String shortened(String line, double room) {
        int most = (int) (room / (7 / POINTS * 0.52));
        return line.length() <= most ? line : line.substring(0, Math.max(0, most - 1)) + "…";
    }
}
