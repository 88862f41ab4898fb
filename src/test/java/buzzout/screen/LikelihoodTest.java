package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LikelihoodTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ':',
            value = {
                "1:almost certain, over 99 %",
                "0.983:almost certain, 98 %",
                "0.9:very likely, 90 %",
                "0.6:likely, 60 %",
                "0.5:even chances, 50 %",
                "0.2:possible, 20 %",
                "0.001:unlikely, under 1 %",
            })
    void a_probability_has_a_word_and_a_number(double probability, String words) {
        assertEquals(words, Likelihood.of(probability));
    }
}
