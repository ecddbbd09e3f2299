package org.twinbar.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/**
 * The phones that were let in. A code lets in one, for a few minutes; nobody is remembered beyond
 * the program's run, and whoever is shut out is so at once.
 */
final class Phones {

    static final Duration CODE_LASTS = Duration.ofMinutes(5);

    /** Wrong codes after which the code at hand is withdrawn, so that none is found by trying. */
    private static final int MOST_WRONG = 10;

    /** Letters and digits that nobody takes for another. */
    private static final String SIGNS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

    private static final int CODE_LENGTH = 8;
    private static final int TOKEN_BYTES = 24;
    private static final int LONGEST_NAME = 40;

    private final SecureRandom random = new SecureRandom();
    private final InstantSource clock;
    private final List<Phone> phones = new ArrayList<>();
    private Optional<Code> code = Optional.empty();
    private int wrong;

    Phones(InstantSource clock) {
        this.clock = clock;
    }

    /**
     * A code that lets one phone in.
     *
     * @param text as it is shown, in two halves
     */
    record Code(String text, Instant until) {}

    /**
     * A phone that was let in.
     *
     * @param name what its entries are entered under
     * @param token what it shows with each request
     */
    record Phone(UUID id, String name, String token, Instant since) {}

    /** Makes a new code; the one before lets nobody in any more. */
    synchronized Code newCode() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < CODE_LENGTH; i++) {
            text.append(i == CODE_LENGTH / 2 ? "-" : "")
                    .append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        Code made = new Code(text.toString(), clock.instant().plus(CODE_LASTS));
        code = Optional.of(made);
        wrong = 0;
        return made;
    }

    /** Returns the code that lets a phone in now. */
    synchronized Optional<Code> code() {
        code = code.filter(it -> clock.instant().isBefore(it.until()));
        return code;
    }

    /**
     * Lets a phone in.
     *
     * @throws Refusal where the code is not the one at hand, or the name is none
     */
    synchronized Phone join(String typed, String name) {
        String plain = name.strip();
        if (plain.isEmpty() || plain.length() > LONGEST_NAME) {
            throw Refusal.badRequest(
                    "Give the phone a name of 1 to %s letters.".formatted(LONGEST_NAME));
        }
        if (phones.stream().anyMatch(it -> it.name().equalsIgnoreCase(plain))) {
            throw Refusal.badRequest(
                    "A phone is called '%s' already; take another name.".formatted(plain));
        }
        if (code().filter(it -> same(bare(it.text()), bare(typed))).isEmpty()) {
            wrong++;
            if (wrong >= MOST_WRONG) {
                code = Optional.empty();
            }
            throw Refusal.badRequest(
                    "That is not the code that the desk shows now; ask for a new one there.");
        }
        code = Optional.empty();
        byte[] token = new byte[TOKEN_BYTES];
        random.nextBytes(token);
        Phone phone = new Phone(
                UUID.randomUUID(),
                plain,
                Base64.getUrlEncoder().withoutPadding().encodeToString(token),
                clock.instant());
        phones.add(phone);
        return phone;
    }

    private static String bare(String text) {
        return text.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    }

    /** Takes as long for a nearly right one. */
    private static boolean same(String one, String other) {
        return MessageDigest.isEqual(
                one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }

    /** Returns the phone that shows this token. */
    synchronized Optional<Phone> showing(String token) {
        return phones.stream().filter(it -> same(it.token(), token)).findFirst();
    }

    synchronized List<Phone> all() {
        return List.copyOf(phones);
    }

    /** Shuts a phone out; says whether there was one. */
    synchronized boolean shutOut(String id) {
        return phones.removeIf(it -> it.id().toString().equals(id));
    }

    synchronized void shutAllOut() {
        phones.clear();
        code = Optional.empty();
    }
}
