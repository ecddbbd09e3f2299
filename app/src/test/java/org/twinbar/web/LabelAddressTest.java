package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.study.judged.StudyName;

class LabelAddressTest {

    private static final String PHONES = "http://192.168.1.20:8477/";
    private static final String OTHER = "0f8e6bb0-5d0c-4a5e-9a3e-0d6d3b1f2c11";

    @TempDir
    Path folder;

    @Test
    void isReadAsItWasWritten() {
        try (Rig rig = Rig.in(folder)) {
            StudyName study = rig.study();
            for (String code : new String[] {"P1", "P 1/2", "50 % + x", "\u00dc7", "a&b"}) {
                String address = LabelAddress.of(PHONES, study, code);
                assertThat(LabelAddress.read(address)).hasValueSatisfying(it -> {
                    assertThat(it.code()).isEqualTo(code);
                    assertThat(it.isOf(study)).isTrue();
                });
            }
            assertThat(LabelAddress.read(
                            " " + LabelAddress.of(PHONES, study, "P1").toUpperCase(Locale.ROOT)))
                    .hasValueSatisfying(it -> assertThat(it.isOf(study)).isTrue());
        }
    }

    @Test
    void nothingElseIsTakenForOne() {
        for (String other : new String[] {
            "",
            "P1",
            "http://192.168.1.20:8477/rig",
            "http://192.168.1.20:8477/studies/x/rig?specimen=P1",
            "http://h/studies/0f8e6bb0-5d0c-4a5e-9a3e-0d6d3b1f2c11/rig?specimen=",
            "http://h/studies/0f8e6bb0-5d0c-4a5e-9a3e-0d6d3b1f2c11/rig?specimen=%zz"
        }) {
            assertThat(LabelAddress.read(other)).as(other).isEmpty();
        }
    }

    @Test
    void theRigOpensTheSpecimenOfALabel() {
        try (Rig rig = Rig.in(folder)) {
            String address = LabelAddress.of(PHONES, rig.study(), "C1");
            String scanned = address.substring(PHONES.length() - 1);
            assertThat(rig.served().get(scanned).headers().firstValue("Location"))
                    .hasValue(rig.path() + "?specimen=C1");
            assertThat(rig.served().get(Links.at(rig.path(), address)).body())
                    .contains("What is read on C1?");
            String other = address.replace(rig.study().id().toString(), OTHER);
            assertThat(rig.served().get(Links.at(rig.path(), other)).body())
                    .contains("That is the label of a specimen of another study");
        }
    }
}
