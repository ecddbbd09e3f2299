package org.twinbar.treatment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.finding.Finding.Kind;

/**
 * The films of several specimens, from the mass that each gained.
 *
 * @param films in the order of the specimens
 * @param mean of the thicknesses (µm)
 * @param deviation their standard deviation (µm); 0 for one film
 * @param findings specimens whose film is not like the others'
 */
public record Coated(List<Of> films, double mean, double deviation, List<Finding> findings) {

    /**
     * One film.
     *
     * @param specimen its code
     * @param micrometres mean thickness over its area (µm)
     * @param uncertainty standard uncertainty of that (µm)
     */
    public record Of(String specimen, double micrometres, double uncertainty) {}

    /** What one specimen gained (g), on its area (mm²). */
    public record Gained(String specimen, double grams, double area) {}

    /** Farther than this share from the middle film is not like the others; common practice. */
    private static final double UNLIKE = 0.3;

    /** Beyond this many standard uncertainties of two films' difference it is not the scale. */
    private static final double SURE = 2 * Math.sqrt(2);

    private static final Kind THIN = Kind.warning(
            "film-thin",
            "%s was coated thin: %s µm, where the middle of the others is %s µm; it is not treated as they are.");
    private static final Kind THICK = Kind.warning(
            "film-thick",
            "%s was coated thick: %s µm, where the middle of the others is %s µm; it is not treated as they are.");
    private static final Kind NOTHING = Kind.serious(
            "film-none", "%s gained no mass (%s g), so it has no film that the scale could see.");

    public Coated {
        films = List.copyOf(films);
        findings = List.copyOf(findings);
    }

    /**
     * Returns the films: t = Δm/(ρ·A), their mean and spread.
     *
     * <p>A film is named where it differs from the median of the others by more than 30 % and by
     * more than two standard uncertainties of the difference of two such films.
     *
     * @param density ρ of the cured film (g/cm³)
     * @param scale that weighed before and after
     * @throws TreatmentException where no specimen was weighed, or density or an area is none
     */
    public static Coated of(List<Gained> gained, double density, Scale scale) {
        if (gained.isEmpty()) {
            throw new TreatmentException(
                    "No specimen was weighed before and after, so there is no film to tell of.");
        }
        List<Of> films = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Gained one : gained) {
            if (!(one.grams() > 0)) {
                findings.add(NOTHING.with(one.specimen(), Figures.two(one.grams())));
                continue;
            }
            Film film = new Film(one.area(), density);
            films.add(new Of(
                    one.specimen(),
                    film.thickness(one.grams()),
                    film.uncertainty(one.grams(), scale, 0, 0)));
        }
        if (films.size() >= 3) {
            films.forEach(film -> unlike(film, films, findings));
        }
        double[] values = films.stream().mapToDouble(Of::micrometres).toArray();
        double mean = Arrays.stream(values).average().orElse(0);
        double squares = Arrays.stream(values)
                .map(value -> (value - mean) * (value - mean))
                .sum();
        return new Coated(
                films,
                mean,
                values.length > 1 ? Math.sqrt(squares / (values.length - 1)) : 0,
                findings);
    }

    private static void unlike(Of film, List<Of> all, List<Finding> findings) {
        double middle = median(all.stream()
                .filter(other -> other != film)
                .mapToDouble(Of::micrometres)
                .sorted()
                .toArray());
        double off = film.micrometres() - middle;
        if (Math.abs(off) > UNLIKE * middle && Math.abs(off) > SURE * film.uncertainty()) {
            findings.add((off < 0 ? THIN : THICK)
                    .with(
                            film.specimen(),
                            Figures.three(film.micrometres()),
                            Figures.three(middle)));
        }
    }

    private static double median(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
