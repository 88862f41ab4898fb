package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import buzzout.circuit.Pair;
import buzzout.probe.ProbeMessage.Beat;
import buzzout.probe.ProbeMessage.Change;
import buzzout.probe.ProbeMessage.Conducts;
import buzzout.probe.ProbeMessage.Full;
import buzzout.probe.ProbeMessage.Iam;
import buzzout.probe.ProbeMessage.Lost;
import buzzout.probe.ProbeMessage.Malformed;
import buzzout.probe.ProbeMessage.No;
import buzzout.probe.ProbeMessage.Ok;
import buzzout.probe.ProbeMessage.OtherProtocol;
import buzzout.probe.ProbeMessage.Unknown;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProbeMessagesTest {
    static Stream<Arguments> messages() {
        return Stream.of(
                Arguments.of(
                        "iam 1 0.1.0 ATmega32U4 26 16000000",
                        new Iam(new Identity(1, "0.1.0", "ATmega32U4", 26, 16_000_000))),
                Arguments.of("iam 2 whatever comes then", new OtherProtocol(2)),
                Arguments.of("ok add 8", new Ok("ok add 8")),
                Arguments.of("no add pin F9", new No("add", "pin", "F9")),
                Arguments.of("no ? crc", new No("?", "crc", "")),
                Arguments.of("+ 12 345678 3 5", new Change(12, 345678, true, new Pair(3, 5))),
                Arguments.of(
                        "- 4294967295 4294967295 5 3", new Change(0xFFFF_FFFFL, 0xFFFF_FFFFL, false, new Pair(5, 3))),
                Arguments.of("= 0 63", new Conducts(new Pair(0, 63))),
                Arguments.of("full 12 345678 2", new Full(12, 345678, 2)),
                Arguments.of("beat 12 345678 900 2", new Beat(12, 345678, 900, 2)),
                Arguments.of("lost 15 3", new Lost(15, 3)),
                Arguments.of("lost 15 3 and more of a newer probe", new Lost(15, 3)));
    }

    @ParameterizedTest
    @MethodSource("messages")
    void reads_each_message(String body, ProbeMessage message) {
        assertEquals(message, ProbeMessages.parse(body));
    }

    @ParameterizedTest
    @ValueSource(strings = {"volts 3 5 0.52", "", "++ 1 2 3 4", "IAM 1"})
    void leaves_verbs_of_newer_probes_alone(String body) {
        assertInstanceOf(Unknown.class, ProbeMessages.parse(body));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "iam",
                "iam one 0.1.0 ATmega32U4 26 16000000",
                "iam 1 0.1.0 ATmega32U4 26",
                "no add",
                "+ 12 345678 3",
                "+ -1 345678 3 5",
                "+ 012 345678 3 5",
                "+ 4294967296 345678 3 5",
                "+ 12 99999999999999999999 3 5",
                "= 3 3",
                "= 3 64",
                "= 3 \u0665",
                "full 12 345678 many",
                "beat 12 345678 900",
                "lost 15"
            })
    void calls_known_verbs_with_senseless_fields_malformed(String body) {
        assertInstanceOf(Malformed.class, ProbeMessages.parse(body));
    }
}
