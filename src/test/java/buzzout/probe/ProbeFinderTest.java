package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProbeFinderTest {
    private static final Port.Usb PROBE = new Port.Usb(0x1209, 0x0001, "Q-01");
    private static final Port.Usb OTHER = new Port.Usb(0x1209, 0x0002, "");

    private final SimulatedBoard board = SimulatedBoard.inSimulatedTime(TestBoard.plan(), List.of(), 1);
    private final List<Port> ports = new ArrayList<>();
    private final Map<String, NamedPort.Opener> behind = new HashMap<>();
    private final List<String> opened = new ArrayList<>();
    private final List<String> closed = new ArrayList<>();
    private final ProbeFinder finder = new ProbeFinder(() -> List.copyOf(ports), this::open, board.time());

    @Test
    void asks_each_usb_port_until_one_introduces_itself() throws Exception {
        plug("/dev/ttyACM0", OTHER, this::silent);
        plug("/dev/ttyACM1", PROBE, path -> board.open().link());

        assertEquals("/dev/ttyACM1", finder.open().port());
        assertEquals(List.of("/dev/ttyACM0", "/dev/ttyACM1"), opened);
        assertEquals(List.of("/dev/ttyACM0"), closed);
    }

    @Test
    void leaves_ports_alone_that_are_not_usb() {
        ports.add(new Port("/dev/ttyS0", "Physical port", Optional.empty()));

        LinkDown down = assertThrows(LinkDown.class, finder::open);
        assertTrue(down.why().startsWith("No USB serial port is there"), down.why());
        assertEquals(List.of(), opened);
    }

    @Test
    void names_the_ports_that_did_not_answer() {
        plug("/dev/ttyACM0", OTHER, this::silent);
        plug("/dev/ttyACM1", OTHER, this::silent);

        LinkDown down = assertThrows(LinkDown.class, finder::open);
        assertTrue(down.why().startsWith("No probe answers on /dev/ttyACM0, /dev/ttyACM1: "), down.why());
    }

    @Test
    void would_rather_say_why_a_port_does_not_open() {
        plug("/dev/ttyACM0", OTHER, this::silent);
        plug("/dev/ttyACM1", PROBE, path -> {
            throw new LinkDown(PortTrouble.inUse(path));
        });

        assertEquals(
                PortTrouble.inUse("/dev/ttyACM1"),
                assertThrows(LinkDown.class, finder::open).why());
    }

    @Test
    void tries_the_port_of_before_first_then_its_device_then_the_others() throws Exception {
        plug("/dev/ttyACM1", PROBE, path -> board.open().link());
        finder.open();
        ports.clear();
        opened.clear();
        plug("/dev/ttyACM0", OTHER, this::silent);
        plug("/dev/ttyACM1", OTHER, this::silent);
        plug("/dev/ttyACM2", PROBE, path -> board.open().link());

        assertEquals("/dev/ttyACM2", finder.open().port());
        assertEquals(List.of("/dev/ttyACM1", "/dev/ttyACM2"), opened);
    }

    @Test
    void keeps_a_talk_going_over_a_replug_under_another_number() throws Exception {
        plug("/dev/ttyACM0", PROBE, path -> board.open().link());
        try (Play play = new Play(finder)) {
            assertEquals("/dev/ttyACM0", play.first(ProbeEvent.Found.class).port());
            board.unplug();
            ports.clear();
            play.pass(3_000);
            int before = play.events().size();
            board.replug();
            plug("/dev/ttyACM1", PROBE, path -> board.open().link());

            assertEquals(
                    "/dev/ttyACM1", play.first(ProbeEvent.Found.class, before).port());
        }
    }

    @Test
    void a_named_port_is_followed_to_its_new_number() throws Exception {
        plug("/dev/ttyACM0", PROBE, path -> board.open().link());
        NamedPort named = new NamedPort("/dev/ttyACM0", () -> List.copyOf(ports), this::open);
        assertEquals("/dev/ttyACM0", named.open().port());
        ports.clear();
        behind.clear();
        assertThrows(LinkDown.class, named::open);
        plug("/dev/ttyACM1", OTHER, this::silent);
        plug("/dev/ttyACM2", PROBE, path -> board.open().link());

        assertEquals("/dev/ttyACM2", named.open().port());
    }

    @Test
    void a_named_port_is_not_followed_where_two_boards_could_be_it() throws Exception {
        plug("/dev/ttyACM0", PROBE, path -> board.open().link());
        NamedPort named = new NamedPort("/dev/ttyACM0", () -> List.copyOf(ports), this::open);
        named.open();
        ports.clear();
        behind.clear();
        plug("/dev/ttyACM1", PROBE, this::silent);
        plug("/dev/ttyACM2", PROBE, path -> board.open().link());

        assertEquals(
                PortTrouble.missing("/dev/ttyACM0"),
                assertThrows(LinkDown.class, named::open).why());
    }

    private void plug(String path, Port.Usb usb, NamedPort.Opener opener) {
        ports.add(new Port(path, "USB serial", Optional.of(usb)));
        behind.put(path, opener);
    }

    private ByteLink open(String path) throws LinkDown {
        opened.add(path);
        NamedPort.Opener opener = behind.get(path);
        if (opener == null) {
            throw new LinkDown(PortTrouble.missing(path));
        }
        return opener.open(path);
    }

    private ByteLink silent(String path) {
        return new ByteLink() {
            @Override
            public int read(byte[] into, int timeoutMillis) throws LinkDown {
                try {
                    board.time().waitOn(this, timeoutMillis * 1000L);
                } catch (InterruptedException never) {
                    throw new LinkDown("interrupted");
                }
                return 0;
            }

            @Override
            public void write(byte[] bytes) {}

            @Override
            public void close() {
                closed.add(path);
            }
        };
    }
}
