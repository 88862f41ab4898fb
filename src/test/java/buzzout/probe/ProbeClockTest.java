package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ProbeClockTest {
    private static final long WRAP = 1L << 32;

    private final ProbeClock clock = new ProbeClock();

    @Test
    void counts_from_the_first_stamp() {
        assertEquals(0, clock.micros(5_000_000, 0));
        assertEquals(70, clock.micros(5_000_070, 70));
    }

    @Test
    void goes_on_where_the_probe_wraps() {
        clock.micros(WRAP - 100, 0);

        assertEquals(150, clock.micros(50, 150));
        for (long quarters = 1; quarters <= 40; quarters++) {
            long passed = 150 + quarters * WRAP / 4;
            assertEquals(passed, clock.micros((WRAP - 100 + passed) % WRAP, passed));
        }
    }

    @Test
    void never_falls_when_stamps_come_out_of_order() {
        clock.micros(1_000, 0);
        clock.micros(1_500, 0);

        assertEquals(500, clock.micros(1_400, 0));
        assertEquals(600, clock.micros(1_600, 0));
    }

    @Test
    void bridges_a_reset_with_the_host_s_time() {
        clock.micros(1_000_000, 10_000_000);
        clock.micros(3_000_000, 12_000_000);
        clock.restart();

        assertEquals(2_700_000, clock.micros(40, 12_700_000));
        assertEquals(2_700_010, clock.micros(50, 12_700_010));
    }
}
