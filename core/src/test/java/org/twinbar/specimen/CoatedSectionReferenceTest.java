package org.twinbar.specimen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;

/** METHODS.md H-1 to H-3 (rows 75 to 79 of section M). */
class CoatedSectionReferenceTest {

    private final Checks checks = Checks.of(getClass());
    private final CoatedSection bar = new CoatedSection(10, 4, 0.15, 2500, 3000);

    @Test
    void agreesOnStiffness() {
        checks.row("75-axial").expects(bar.axialRatio());
        checks.row("75-bending").expects(bar.bendingRatio());
        checks.row("76-axial-original").expects(bar.axialModulusOnOriginal());
        checks.row("76-axial-coated").expects(bar.axialModulusOnCoated());
        checks.row("76-flexural-original").expects(bar.flexuralModulusOnOriginal());
        checks.row("76-flexural-coated").expects(bar.flexuralModulusOnCoated());
        checks.row("77-core").expects(bar.coreStress(1280));
        checks.row("77-film").expects(bar.filmStress(1280));
    }

    @Test
    void agreesOnLoads() {
        CoatedSection.Loads loads = bar.loads(50, 40);
        checks.row("78-first-crack").expects(loads.firstCrack());
        checks.row("78-core").expects(loads.coreAlone());
        checks.row("78-bound").expects(loads.bound());
        assertThat(loads.predicted()).isEqualTo(loads.coreAlone());
    }

    @Test
    void agreesOnAFilmOnOneSide() {
        OneSidedFilm film = new OneSidedFilm(10, 4, 0.3, 2500, 3000);
        checks.row("79-axis").expects(film.neutralAxis());
        checks.row("79-stiffness").expects(film.bendingStiffness());
        checks.row("79-ratio").expects(film.bendingRatio());
    }

    @Test
    void agreesOnTheUncertaintyOfTheGain() {
        checks.row("h-u-axial")
                .expects(SectionGain.of(bar.axialRatio(), 0.20, 0.15, 0).standardUncertainty());
        checks.row("h-u-bending")
                .expects(SectionGain.of(bar.bendingRatio(), 0.20, 0.15, 0).standardUncertainty());
    }

    @Test
    void givesNothingForAFilmOfNoStiffness() {
        CoatedSection soft = new CoatedSection(10, 4, 0.15, 2500, 1e-9);
        assertThat(soft.axialRatio()).isCloseTo(1, within(1e-12));
        assertThat(soft.bendingRatio()).isCloseTo(1, within(1e-12));
        CoatedSection alike = new CoatedSection(10, 4, 0.15, 2500, 2500);
        assertThat(alike.axialModulusOnCoated()).isCloseTo(2500, within(1e-9));
        assertThat(alike.flexuralModulusOnCoated()).isCloseTo(2500, within(1e-9));
    }

    @Test
    void refusesWhatIsNoSize() {
        assertThatThrownBy(() -> new CoatedSection(0, 4, 0.15, 2500, 3000))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The width (mm) must be above zero and finite, not 0.0.");
        assertThatThrownBy(() -> new OneSidedFilm(10, 4, Double.NaN, 2500, 3000))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SectionGain(1.1, -1, 5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> bar.loads(50, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
