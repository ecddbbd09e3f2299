package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.twinbar.method.Answering;
import org.twinbar.method.Methods;
import org.twinbar.planning.Series;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.judged.Claim;

/** Which kinds of specimens the questions of a study ask for. */
public final class SeriesForClaims {

    private static final String OWN = "own";

    private SeriesForClaims() {}

    public static List<Series> of(List<Claim> claims, Methods methods, int perGroup, int pilots) {
        Map<List<String>, Series> series = new LinkedHashMap<>();
        for (Claim claim : claims) {
            for (Claim.Question question : claim.questions()) {
                PrintOrientation orientation = orientation(question);
                String shape = shape(question, methods);
                List<String> kind = List.of(question.method(), orientation.word());
                series.putIfAbsent(
                        kind,
                        new Series(
                                name(question.method(), orientation, said(question)),
                                question.method(),
                                shape,
                                orientation,
                                perGroup,
                                pilots));
            }
        }
        return new ArrayList<>(series.values());
    }

    private static String name(String method, PrintOrientation orientation, boolean said) {
        return said ? "%s, %s".formatted(method, orientation.word()) : method;
    }

    private static boolean said(Claim.Question question) {
        return question.asked().where().containsKey("orientation");
    }

    private static PrintOrientation orientation(Claim.Question question) {
        String word = question.asked().where().getOrDefault("orientation", "flat");
        for (PrintOrientation each : PrintOrientation.values()) {
            if (each.word().equals(word.toLowerCase(Locale.ROOT))) {
                return each;
            }
        }
        return PrintOrientation.FLAT;
    }

    /** The shape that is usual for what is asked, else for anything that the test answers. */
    private static String shape(Claim.Question question, Methods methods) {
        List<Answering> answering = OwnMethods.named(methods, question.method()).answering();
        Optional<Answering> asked = answering.stream()
                .filter(each -> each.property().name().equals(question.asked().property()))
                .findFirst();
        return asked.or(() -> answering.stream().findFirst())
                .map(Answering::shape)
                .filter(shape -> !shape.isEmpty())
                .orElse(OWN);
    }
}
