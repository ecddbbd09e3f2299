package org.twinbar.exchange.datapackage;

import java.util.Arrays;
import java.util.List;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;

/** A licence that data are often published under. */
public enum Licence {
    CC0_1_0("CC0-1.0", "Creative Commons Zero 1.0", "creativecommons.org/publicdomain/zero/1.0/"),
    CC_BY_4_0(
            "CC-BY-4.0",
            "Creative Commons Attribution 4.0",
            "creativecommons.org/licenses/by/4.0/"),
    CC_BY_SA_4_0(
            "CC-BY-SA-4.0",
            "Creative Commons Attribution-ShareAlike 4.0",
            "creativecommons.org/licenses/by-sa/4.0/"),
    ODC_BY_1_0(
            "ODC-BY-1.0",
            "Open Data Commons Attribution 1.0",
            "opendatacommons.org/licenses/by/1-0/"),
    ODBL_1_0(
            "ODbL-1.0",
            "Open Data Commons Open Database License 1.0",
            "opendatacommons.org/licenses/odbl/1-0/"),
    PDDL_1_0(
            "PDDL-1.0",
            "Open Data Commons Public Domain Dedication 1.0",
            "opendatacommons.org/licenses/pddl/1-0/");

    private final String identifier;
    private final String title;
    private final String address;

    Licence(String identifier, String title, String address) {
        this.identifier = identifier;
        this.title = title;
        this.address = address;
    }

    public String identifier() {
        return identifier;
    }

    public String title() {
        return title;
    }

    String address() {
        return "https://" + address;
    }

    /** @throws InputException where it is none of these */
    public static Licence of(String identifier) {
        List<String> known = Arrays.stream(values()).map(Licence::identifier).toList();
        return Arrays.stream(values())
                .filter(it -> it.identifier.equalsIgnoreCase(identifier.strip()))
                .findFirst()
                .orElseThrow(() -> new InputException("the licence '%s' is none of %s%s"
                        .formatted(
                                identifier,
                                String.join(", ", known),
                                Spelling.hint(identifier, known))));
    }
}
