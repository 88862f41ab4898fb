package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PatienceTest {
    @Test
    void so_many_branches_are_expanded_and_no_more() {
        Patience patience = new Patience(2);
        assertFalse(patience.isSpent());
        assertFalse(patience.isSpent());
        assertFalse(patience.wasSpent(), "nobody asked for more");
        assertTrue(patience.isSpent());
        assertTrue(patience.wasSpent());
    }
}
