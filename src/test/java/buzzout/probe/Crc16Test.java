package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class Crc16Test {
    @Test
    void agrees_with_the_published_check_value() {
        // CHECKS.md section 8: CRC-16/XMODEM of these nine characters; Cook's CRC catalogue, recomputed.
        byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);

        assertEquals(0x31C3, Crc16.of(digits, digits.length));
    }

    @Test
    void of_no_bytes_is_zero() {
        assertEquals(0, Crc16.of(new byte[] {1, 2, 3}, 0));
    }
}
