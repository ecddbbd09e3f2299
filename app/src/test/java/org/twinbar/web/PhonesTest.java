package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class PhonesTest {

    private Instant now = Instant.parse("2026-05-04T10:00:00Z");
    private final Phones phones = new Phones(() -> now);

    @Test
    void letsOnePhoneInWithACode() {
        String code = phones.newCode().text();
        Phones.Phone phone = phones.join(code.toLowerCase(java.util.Locale.ROOT), " Ida ");
        assertThat(phone.name()).isEqualTo("Ida");
        assertThat(phones.showing(phone.token())).hasValue(phone);
        assertThat(phones.showing(phone.token() + "x")).isEmpty();
        assertThatThrownBy(() -> phones.join(code, "Ben"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("not the code that the desk shows now");
        assertThat(phones.all()).containsExactly(phone);
    }

    @Test
    void forgetsACodeAfterFiveMinutes() {
        String code = phones.newCode().text();
        now = now.plus(Phones.CODE_LASTS);
        assertThat(phones.code()).isEmpty();
        assertThatThrownBy(() -> phones.join(code, "Ida")).isInstanceOf(Refusal.class);
    }

    @Test
    void forgetsTheCodeBefore() {
        String first = phones.newCode().text();
        assertThat(phones.newCode().text()).isNotEqualTo(first);
        assertThatThrownBy(() -> phones.join(first, "Ida")).isInstanceOf(Refusal.class);
    }

    @Test
    void withdrawsACodeThatSomebodyTriesToFind() {
        String code = phones.newCode().text();
        for (int i = 0; i < 10; i++) {
            assertThatThrownBy(() -> phones.join("AAAA-AAAA", "Ida")).isInstanceOf(Refusal.class);
        }
        assertThatThrownBy(() -> phones.join(code, "Ida")).isInstanceOf(Refusal.class);
    }

    @Test
    void tellsPhonesApartByTheirNames() {
        phones.join(phones.newCode().text(), "Ida");
        String code = phones.newCode().text();
        assertThatThrownBy(() -> phones.join(code, "ida")).hasMessageContaining("already");
        assertThatThrownBy(() -> phones.join(code, " ")).hasMessageContaining("a name of 1 to 40");
        assertThat(phones.join(code, "Ben").name()).isEqualTo("Ben");
    }

    @Test
    void shutsAPhoneOut() {
        Phones.Phone ida = phones.join(phones.newCode().text(), "Ida");
        Phones.Phone ben = phones.join(phones.newCode().text(), "Ben");
        assertThat(phones.shutOut(ida.id().toString())).isTrue();
        assertThat(phones.shutOut(ida.id().toString())).isFalse();
        assertThat(phones.showing(ida.token())).isEmpty();
        assertThat(phones.showing(ben.token())).isPresent();
        phones.shutAllOut();
        assertThat(phones.all()).isEmpty();
    }
}
