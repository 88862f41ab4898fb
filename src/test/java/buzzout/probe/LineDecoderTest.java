package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineDecoderTest {
    private static final String BODY_LETTERS = "abcdefghijklmnopqrstuvwxyz0123456789+-=?.";

    @Test
    void gives_back_a_line() {
        assertEquals(List.of(new Received.Good("123456789")), decode("123456789*31C3\n"));
    }

    @Test
    void tolerates_a_carriage_return_before_the_line_feed_and_nowhere_else() {
        assertEquals(List.of(new Received.Good("123456789")), decode("123456789*31C3\r\n"));
        assertEquals(
                List.of(new Received.Garbage(Received.Cause.CHECK, "123456789*31C3\\x0D")),
                decode("123456789*31C3\r\r\n"));
    }

    @Test
    void says_nothing_of_empty_lines() {
        assertEquals(List.of(), decode("\n\r\n\n"));
    }

    @Test
    void takes_only_uppercase_digits_as_a_check() {
        assertEquals(List.of(new Received.Garbage(Received.Cause.CHECK, "123456789*31c3")), decode("123456789*31c3\n"));
    }

    @Test
    void skips_garbage_to_the_line_end_and_shows_it_harmless() {
        assertEquals(
                List.of(
                        new Received.Garbage(Received.Cause.CHECK, "\\x1B]0;owned\\x07\\xE2\\x80\\xAE"),
                        new Received.Good("123456789")),
                decode("\u001b]0;owned\u0007\u202e\n123456789*31C3\n"));
    }

    @Test
    void tells_of_an_endless_line_once_and_at_once() {
        LineDecoder decoder = new LineDecoder();

        assertEquals(1, take(decoder, "x".repeat(98)).size());
        assertEquals(List.of(), take(decoder, "x".repeat(1_000_000)));
        assertEquals(List.of(new Received.Good("123456789")), take(decoder, "\n123456789*31C3\n"));
    }

    @Test
    void takes_the_longest_line_and_calls_one_byte_more_too_long() {
        byte[] longest = Line.encode("x".repeat(91));
        assertEquals(List.of(new Received.Good("x".repeat(91))), decode(text(longest)));
        assertEquals(
                List.of(new Received.Good("x".repeat(91))), decode(text(longest).replace("\n", "\r\n")));
        assertEquals(
                Received.Cause.TOO_LONG,
                ((Received.Garbage) decode("x" + text(longest)).get(0)).cause());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 20261125})
    void does_not_care_where_a_stream_is_cut(long seed) {
        Random random = new Random(seed);
        List<Received> sent = new ArrayList<>();
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        for (int line = 0; line < 500; line++) {
            String body = body(random);
            sent.add(new Received.Good(body));
            stream.writeBytes(Line.encode(body));
        }

        LineDecoder decoder = new LineDecoder();
        List<Received> received = new ArrayList<>();
        byte[] bytes = stream.toByteArray();
        for (int from = 0; from < bytes.length; ) {
            byte[] chunk = new byte[Math.min(random.nextInt(1, 200), bytes.length - from)];
            System.arraycopy(bytes, from, chunk, 0, chunk.length);
            received.addAll(decoder.take(chunk, chunk.length));
            from += chunk.length;
        }

        assertEquals(sent, received, "seed " + seed);
    }

    /** Every single byte of a line changed to every other, lost, and doubled: three whole lines around it. */
    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6, 7, 8})
    void never_takes_a_damaged_line_for_another(long seed) {
        Random random = new Random(seed);
        String before = body(random);
        String hit = body(random);
        String after = body(random);
        String last = body(random);
        byte[] line = Line.encode(hit);
        for (int at = 0; at < line.length; at++) {
            List<byte[]> damages = new ArrayList<>();
            for (int value = 0; value < 256; value++) {
                byte[] changed = line.clone();
                changed[at] = (byte) value;
                damages.add(changed);
            }
            damages.add(text(line)
                    .substring(0, at)
                    .concat(text(line).substring(at + 1))
                    .getBytes(StandardCharsets.ISO_8859_1));
            damages.add(text(line)
                    .substring(0, at + 1)
                    .concat(text(line).substring(at))
                    .getBytes(StandardCharsets.ISO_8859_1));
            for (byte[] damaged : damages) {
                List<String> good = good(decode(text(Line.encode(before))
                        + text(damaged)
                        + text(Line.encode(after))
                        + text(Line.encode(last))));
                String what = "seed " + seed + ", " + Printable.of(text(damaged));
                assertTrue(List.of(before, hit, after, last).containsAll(good), what + " gave " + good);
                assertEquals(before, good.get(0), what);
                assertEquals(last, good.get(good.size() - 1), what);
                assertTrue(at == line.length - 1 || good.contains(after), what + " cost the line after it");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {9, 10, 11})
    void finds_its_way_back_after_any_noise(long seed) {
        Random random = new Random(seed);
        LineDecoder decoder = new LineDecoder();
        for (int round = 0; round < 2_000; round++) {
            byte[] noise = new byte[random.nextInt(300)];
            random.nextBytes(noise);
            decoder.take(noise, noise.length);
            String body = body(random);
            List<Received> received = take(decoder, "\n" + text(Line.encode(body)));

            assertEquals(new Received.Good(body), received.get(received.size() - 1), "seed " + seed);
        }
    }

    private static List<Received> decode(String stream) {
        return take(new LineDecoder(), stream);
    }

    private static List<Received> take(LineDecoder decoder, String stream) {
        boolean latin = stream.chars().allMatch(c -> c < 256);
        byte[] bytes = stream.getBytes(latin ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8);
        return decoder.take(bytes, bytes.length);
    }

    private static List<String> good(List<Received> received) {
        return received.stream()
                .filter(Received.Good.class::isInstance)
                .map(line -> ((Received.Good) line).body())
                .toList();
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static String body(Random random) {
        StringBuilder body = new StringBuilder();
        int fields = random.nextInt(1, 6);
        for (int field = 0; field < fields; field++) {
            body.append(field == 0 ? "" : " ");
            for (int letter = random.nextInt(1, 12); letter > 0; letter--) {
                body.append(BODY_LETTERS.charAt(random.nextInt(BODY_LETTERS.length())));
            }
        }
        return body.toString();
    }
}
