package org.twinbar.web;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Act;

/** The page that holds a form gives its act, so that a form that is sent twice is done once. */
final class Acts {

    private Acts() {}

    /** @throws InputException where the form has no identity of ours */
    static Act by(Form form) {
        return form.said("act")
                .map(act -> new Act(uuid(act), Words.WHO))
                .orElseGet(() -> Act.by(Words.WHO));
    }

    /** Returns one of several acts that a form may ask for, each done once. */
    static Act by(Form form, String which) {
        UUID whole = by(form).id();
        return new Act(
                UUID.nameUUIDFromBytes((whole + " " + which).getBytes(StandardCharsets.UTF_8)),
                Words.WHO);
    }

    private static UUID uuid(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw new InputException("the form is not one of these pages");
        }
    }
}
