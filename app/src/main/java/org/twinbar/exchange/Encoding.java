package org.twinbar.exchange;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** How the bytes of a text file become letters. */
public enum Encoding {
    UTF_8(StandardCharsets.UTF_8, "UTF-8"),
    UTF_16LE(StandardCharsets.UTF_16LE, "UTF-16LE"),
    UTF_16BE(StandardCharsets.UTF_16BE, "UTF-16BE"),
    WINDOWS_1252(Charset.forName("windows-1252"), "Windows-1252");

    private final Charset charset;
    private final String word;

    Encoding(Charset charset, String word) {
        this.charset = charset;
        this.word = word;
    }

    Charset charset() {
        return charset;
    }

    public String word() {
        return word;
    }

    /**
     * Reads the value of {@code --encoding}.
     *
     * @throws InputException where the word is none of them
     */
    public static Encoding parse(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("[-_ ]", "");
        return switch (plain) {
            case "utf8" -> UTF_8;
            case "utf16", "utf16le" -> UTF_16LE;
            case "utf16be" -> UTF_16BE;
            case "windows1252", "cp1252", "latin1", "iso88591" -> WINDOWS_1252;
            default ->
                throw new InputException(
                        "--encoding %s: write utf-8, utf-16le, utf-16be or windows-1252"
                                .formatted(Place.quote(text)));
        };
    }

    /** Returns how many bytes at the beginning are the mark of this encoding. */
    int markLength(byte[] bytes, int length) {
        return switch (this) {
            case UTF_8 -> startsWith(bytes, length, 0xEF, 0xBB, 0xBF) ? 3 : 0;
            case UTF_16LE -> startsWith(bytes, length, 0xFF, 0xFE) ? 2 : 0;
            case UTF_16BE -> startsWith(bytes, length, 0xFE, 0xFF) ? 2 : 0;
            case WINDOWS_1252 -> 0;
        };
    }

    /** Returns the encoding that the beginning of a file shows; empty where it holds no text. */
    static Optional<Encoding> find(byte[] bytes, int length) {
        for (Encoding marked : new Encoding[] {UTF_8, UTF_16LE, UTF_16BE}) {
            if (marked.markLength(bytes, length) > 0) {
                return Optional.of(marked);
            }
        }
        Content content = Content.of(bytes, length);
        if (content.zeros > 0) {
            return content.wideLetters();
        }
        if (content.controls > 0) {
            return Optional.empty();
        }
        return Optional.of(content.ascii || isUtf8(bytes, length) ? UTF_8 : WINDOWS_1252);
    }

    /** A letter that the end of the sample cuts in two doesn't count against UTF-8. */
    private static boolean isUtf8(byte[] bytes, int length) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer letters = CharBuffer.allocate(length);
        return !decoder.decode(ByteBuffer.wrap(bytes, 0, length), letters, false)
                .isError();
    }

    private static boolean startsWith(byte[] bytes, int length, int... mark) {
        if (length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** What a count of bytes tells. */
    private record Content(int length, int zeros, int zerosAtOdd, int controls, boolean ascii) {

        private static final byte LETTER = 0;
        private static final byte ZERO = 1;
        private static final byte CONTROL = 2;
        private static final byte BEYOND_ASCII = 4;
        private static final byte[] KINDS = kinds();

        private static byte[] kinds() {
            byte[] kinds = new byte[256];
            for (int b = 0; b < kinds.length; b++) {
                boolean control = b < ' ' && "\t\n\r\f\u001a".indexOf(b) < 0;
                kinds[b] = b == 0 ? ZERO : control ? CONTROL : b >= 0x80 ? BEYOND_ASCII : LETTER;
            }
            return kinds;
        }

        static Content of(byte[] bytes, int length) {
            int all = 0;
            for (int i = 0; i < length; i++) {
                all |= KINDS[bytes[i] & 0xFF];
            }
            boolean ascii = (all & BEYOND_ASCII) == 0;
            if ((all & (ZERO | CONTROL)) == 0) {
                return new Content(length, 0, 0, 0, ascii);
            }
            int zeros = 0;
            int zerosAtOdd = 0;
            int controls = 0;
            for (int i = 0; i < length; i++) {
                int kind = KINDS[bytes[i] & 0xFF];
                zeros += kind == ZERO ? 1 : 0;
                zerosAtOdd += kind == ZERO ? i & 1 : 0;
                controls += kind == CONTROL ? 1 : 0;
            }
            return new Content(length, zeros, zerosAtOdd, controls, ascii);
        }

        /** In UTF-16 nearly every second byte of a table is zero, always on the same side. */
        Optional<Encoding> wideLetters() {
            boolean enough = zeros * 10L >= length * 4L;
            if (enough && zerosAtOdd * 100L >= zeros * 98L) {
                return Optional.of(UTF_16LE);
            }
            return enough && zerosAtOdd * 100L <= zeros * 2L
                    ? Optional.of(UTF_16BE)
                    : Optional.empty();
        }
    }
}
