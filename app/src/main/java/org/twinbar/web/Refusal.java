package org.twinbar.web;

/** Says in one sentence why a request is not answered. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;

    private Refusal(int status, String sentence) {
        super(sentence);
        this.status = status;
    }

    static Refusal badRequest(String sentence) {
        return new Refusal(400, sentence);
    }

    static Refusal forbidden(String sentence) {
        return new Refusal(403, sentence);
    }

    static Refusal notFound(String sentence) {
        return new Refusal(404, sentence);
    }

    int status() {
        return status;
    }
}
