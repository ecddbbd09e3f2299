package org.twinbar.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;

/** Letters as a stream of UTF-8. */
final class Recoded extends InputStream {
    private final Reader reader;
    private final char[] letters = new char[1 << 13];
    private byte[] bytes = new byte[0];
    private int at;

    Recoded(Reader reader) {
        this.reader = reader;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        while (at == bytes.length) {
            int read = reader.read(letters, 0, letters.length - 1);
            if (read < 0) {
                return -1;
            }
            boolean half = read > 0 && Character.isHighSurrogate(letters[read - 1]);
            int more = half ? Math.max(reader.read(letters, read, 1), 0) : 0;
            bytes = new String(letters, 0, read + more).getBytes(StandardCharsets.UTF_8);
            at = 0;
        }
        int count = Math.min(length, bytes.length - at);
        System.arraycopy(bytes, at, into, offset, count);
        at += count;
        return count;
    }
}
