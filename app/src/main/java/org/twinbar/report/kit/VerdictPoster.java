package org.twinbar.report.kit;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.report.Fonts;
import org.twinbar.report.Sheet;
import org.twinbar.report.Theme;

/** A verdict as a picture: the claim, its mark and word, what was found, and the pictures of it. */
final class VerdictPoster {

    private static final double GAP = 64;

    /** Size of the text of the report's pictures, in their own units. */
    private static final double TEXT_OF_PICTURES = 14.5;

    private final Poster poster;
    private final Sizes sizes;
    private final Sheet.Answer answer;

    private VerdictPoster(Frame frame, Sheet.Answer answer) {
        this.poster = new Poster(frame);
        this.sizes = Sizes.of(frame);
        this.answer = answer;
    }

    /** How large text stands in a frame: as large as leaves room for the pictures. */
    private record Sizes(double quote, double heading, double word, double sentence, double mark) {
        static Sizes of(Frame frame) {
            return switch (frame) {
                case WIDE -> new Sizes(122, 72, 160, 80, 8);
                case SQUARE -> new Sizes(104, 60, 116, 62, 5.6);
                case TALL -> new Sizes(122, 72, 150, 78, 7);
            };
        }
    }

    static Poster of(Frame frame, Sheet sheet, Sheet.Claim claim, Sheet.Answer answer) {
        VerdictPoster verdict = new VerdictPoster(frame, answer);
        verdict.poster.tell("“" + claim.quoted() + "”: " + answer.verdict() + ".");
        boolean beside = frame == Frame.WIDE;
        double width = beside
                ? (frame.width() - 3.0 * Frame.MARGIN) / 2
                : frame.width() - 2.0 * Frame.MARGIN;
        double end = verdict.words(claim, width);
        double left = beside ? 2.0 * Frame.MARGIN + width : Frame.MARGIN;
        double top = beside ? Frame.MARGIN : end + GAP;
        if (answer.pictures().isEmpty()) {
            verdict.conditions(left, top, width);
        } else {
            verdict.pictures(left, top, width);
        }
        verdict.poster.foot(sheet);
        return verdict.poster;
    }

    private double words(Sheet.Claim claim, double width) {
        double x = Frame.MARGIN;
        double y = poster.say(
                "“" + claim.quoted() + "”",
                x,
                Frame.MARGIN - 20,
                width,
                sizes.quote(),
                Fonts.Weight.BOLD,
                Theme.INK);
        y = poster.say(
                answer.heading(),
                x,
                y + 8,
                width,
                sizes.heading(),
                Fonts.Weight.REGULAR,
                Theme.SOFT);
        y += GAP;
        if (answer.mark().isPresent()) {
            Outlined mark = Outlined.of(answer.mark().get());
            poster.put(mark, x, y, sizes.mark());
            poster.tell(mark.words() + ".");
            y += sizes.mark() * mark.height() + GAP / 2;
        }
        y = poster.say(
                answer.verdict(), x, y, width, sizes.word(), Fonts.Weight.BOLD, Theme.TREATED);
        poster.tell(answer.brief());
        return poster.say(
                answer.brief(),
                x,
                y + 16,
                width,
                sizes.sentence(),
                Fonts.Weight.REGULAR,
                Theme.INK);
    }

    /** Puts in as many of the first two pictures as can be read, as large as there is room. */
    private void pictures(double x, double top, double width) {
        List<Outlined> pictures = new ArrayList<>();
        answer.pictures().stream()
                .limit(2)
                .forEach(picture -> pictures.add(Outlined.of(picture.svg())));
        double height = poster.bottom() - top;
        double least = Frame.SMALLEST_TEXT / TEXT_OF_PICTURES;
        while (!pictures.isEmpty()) {
            double gaps = GAP * (pictures.size() - 1);
            double tall = pictures.stream().mapToDouble(Outlined::height).sum();
            double scale = Math.min(width / pictures.get(0).width(), (height - gaps) / tall);
            if (scale >= least) {
                double y = top + Math.max(0, height - gaps - scale * tall) / 2;
                for (Outlined picture : pictures) {
                    poster.put(picture, x, y, scale);
                    poster.tell(picture.words());
                    y += scale * picture.height() + GAP;
                }
                return;
            }
            // The second one, the effect beside what is worth having, says more in less room.
            pictures.remove(0);
        }
    }

    private void conditions(double x, double top, double width) {
        double y = top;
        for (Sheet.Item item : answer.items()) {
            y = line(item.term(), x, y, width, Fonts.Weight.BOLD);
            for (String paragraph : item.paragraphs()) {
                y = line(paragraph, x, y + 18, width, Fonts.Weight.REGULAR);
            }
            y += GAP;
        }
    }

    private double line(String text, double x, double y, double width, Fonts.Weight weight) {
        if (y + Poster.heightOf(text, width, sizes.sentence(), weight) > poster.bottom()) {
            return y;
        }
        poster.tell(text);
        return poster.say(text, x, y, width, sizes.sentence(), weight, Theme.INK);
    }
}
