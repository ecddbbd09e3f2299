package org.twinbar.treatment;

import java.util.List;

/** The dangers of mixing and coating, to be said where the step is done. Source: METHODS.md G. */
public final class Cautions {

    /** For whoever mixes and coats. */
    public static final List<String> MIXING = List.of(
            "Uncured resin and hardener make skin allergic for life: nitrile gloves, no bare skin,"
                    + " and never wash skin with solvent.",
            "Air the room; a mix that heats up in the cup goes outdoors, spread out, away from"
                    + " anything that burns.",
            "More hardener does not cure an epoxy faster: it spoils it.",
            "A cured film is not fit for food or drinking water because its ingredients or a leak"
                    + " test look so; an accredited laboratory and local law decide.");

    private Cautions() {}
}
