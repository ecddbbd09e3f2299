package org.twinbar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ChecksTest {

    private final Checks checks = Checks.of(ChecksTest.class);

    @Test
    void takesAValueWithinItsTolerance() {
        checks.row("plain").expects(2.59);
        checks.row("relative").expects(200.19);
        checks.row("unbounded").expects(Double.POSITIVE_INFINITY);
    }

    @Test
    void refusesAValueBeyondItsTolerance() {
        assertFails("plain", 2.61);
        assertFails("relative", 200.21);
        assertFails("unbounded", 1e300);
        assertFails("plain", Double.NaN);
    }

    @Test
    void refusesAnIdThatIsNotThere() {
        assertThatThrownBy(() -> checks.row("plian")).isInstanceOf(AssertionError.class);
    }

    @Test
    void countsMatchingDigits() {
        assertThat(Checks.digits(100.1, 100)).isCloseTo(3, within(1e-9));
        assertThat(Checks.digits(0.01, 0)).isCloseTo(2, within(1e-9));
        assertThat(Checks.digits(1, 1)).isEqualTo(15);
        assertThat(Checks.digits(-5, 1)).isZero();
        assertThat(Checks.digits(Double.NaN, 1)).isZero();
    }

    @Test
    void keepsWhatWasFound() throws IOException {
        checks.row("plain").expects(2.525);
        Path found =
                Path.of(System.getProperty("basedir", ""), "target", "checks", "org.twinbar.csv");
        assertThat(Files.readString(found))
                .contains(
                        "plain,a number,\"with, a comma and \"\"quotes\"\"\",2.5,0.1,invented,2.525,2.0\n");
    }

    private void assertFails(String id, double ours) {
        assertThatThrownBy(() -> checks.row(id).expects(ours)).isInstanceOf(AssertionError.class);
    }
}
