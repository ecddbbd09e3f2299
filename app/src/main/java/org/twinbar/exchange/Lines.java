package org.twinbar.exchange;

import java.io.IOException;
import java.io.InputStream;

/** The lines of a stream of bytes, one at a time; the buffer grows to the longest of them. */
final class Lines {

    /** A line longer than this is no row of a curve. */
    private static final int LONGEST = 1 << 20;

    private static final int BUFFER = 1 << 16;

    private final InputStream in;
    private final Place file;
    private byte[] buffer;
    private int from;
    private int to;
    private int next;
    private int filled;
    private boolean ended;
    private boolean shared;
    private int number;

    Lines(InputStream in, Place file) {
        this.in = in;
        this.file = file;
        this.buffer = new byte[BUFFER];
    }

    /** Lines whose first bytes were read already; they are not changed. */
    Lines(byte[] first, int from, InputStream rest, Place file) {
        this.in = rest;
        this.file = file;
        this.buffer = first;
        this.shared = true;
        this.from = from;
        this.next = from;
        this.filled = first.length;
    }

    /** Moves to the next line; false where there is none. */
    boolean advance() throws IOException {
        from = next;
        int at = from;
        while (true) {
            while (at < filled && buffer[at] != '\n' && buffer[at] != '\r') {
                at++;
            }
            boolean endsHere = at < filled && (buffer[at] == '\n' || at + 1 < filled || ended);
            if (endsHere) {
                to = at;
                boolean two = buffer[at] == '\r' && at + 1 < filled && buffer[at + 1] == '\n';
                next = at + (two ? 2 : 1);
                number++;
                return true;
            }
            if (ended) {
                to = filled;
                next = filled;
                number++;
                return from < filled;
            }
            at = at - from + fill();
        }
    }

    /** Makes room, reads on, and returns where the current line begins now. */
    private int fill() throws IOException {
        int kept = filled - from;
        if (kept > LONGEST) {
            throw file.line(number + 1).refuse("is longer than %s characters".formatted(LONGEST));
        }
        byte[] roomy = buffer;
        if (shared || kept > buffer.length / 2) {
            roomy = new byte[Math.max(BUFFER, 2 * kept)];
            shared = false;
        }
        System.arraycopy(buffer, from, roomy, 0, kept);
        buffer = roomy;
        from = 0;
        filled = kept;
        int read = in.read(buffer, filled, buffer.length - filled);
        ended = read < 0;
        filled += Math.max(read, 0);
        return 0;
    }

    /** Returns where the next line begins among the bytes. */
    int next() {
        return next;
    }

    /** Returns how many of the bytes have been read; a line that ends there may go on. */
    int filled() {
        return filled;
    }

    /** Passes the next line over, which somebody has read from its bytes. */
    void pass(int behindIt) {
        next = behindIt;
        number++;
    }

    byte[] bytes() {
        return buffer;
    }

    int from() {
        return from;
    }

    int to() {
        return to;
    }

    /** Returns the number of the current line, counted from 1. */
    int number() {
        return number;
    }
}
