package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class PortTroubleTest {
    @TempDir
    Path folder;

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void names_the_group_to_join_and_the_command() throws Exception {
        Path device = Files.createFile(folder.resolve("ttyACM0"));
        Files.setPosixFilePermissions(device, PosixFilePermissions.fromString("rw-rw----"));
        String group =
                Files.readAttributes(device, PosixFileAttributes.class).group().getName();
        String command = List.of("root", "wheel").contains(group)
                ? "run `sudo chmod a+rw " + device + "`, which lasts until it is unplugged."
                : "run `sudo usermod -aG " + group + " $USER`, log out and in again.";

        assertEquals("This user may not open " + device + ": " + command, PortTrouble.notOpened(device.toString(), 13));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void never_takes_a_device_of_the_same_name_for_a_path_that_leads_nowhere() {
        String path = folder.resolve("null").toString();

        LinkDown down = assertThrows(LinkDown.class, () -> SerialPorts.open(path, true));

        assertEquals(PortTrouble.missing(path), down.why());
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void proposes_no_group_that_may_not_either() throws Exception {
        Path device = Files.createFile(folder.resolve("ttyACM0"));
        Files.setPosixFilePermissions(device, PosixFilePermissions.fromString("rw-r--r--"));

        assertTrue(PortTrouble.notOpened(device.toString(), 13).contains("`sudo chmod a+rw " + device + "`"));
    }

    @Test
    void says_who_else_may_have_the_port() {
        String inUse = "Another program has COM3 open: close serial monitors and any other Buzzout.";

        assertEquals(inUse, PortTrouble.notOpened("COM3", 11));
        assertEquals(inUse, PortTrouble.notOpened("COM3", 16));
        assertEquals(inUse, PortTrouble.notOpened("COM3", 5));
    }

    @Test
    void tells_a_port_that_is_gone_from_one_that_is_open_already() throws Exception {
        Path there = Files.createFile(folder.resolve("ttyACM0"));
        Path gone = folder.resolve("ttyACM1");

        assertEquals(PortTrouble.missing(gone.toString()), PortTrouble.notOpened(gone.toString(), 2));
        assertEquals(PortTrouble.inUse(there.toString()), PortTrouble.notOpened(there.toString(), 2));
    }

    @Test
    void takes_a_path_that_cannot_be_one_for_missing() {
        assertEquals(
                "There is no port a\\x00b: plug the probe in, or see what `buzzout ports` lists.",
                PortTrouble.notOpened("a\0b", 2));
    }

    @Test
    void shows_the_number_of_an_error_that_it_does_not_know() {
        assertTrue(PortTrouble.notOpened("COM3", 99).contains("(error 99)"));
    }

    @Test
    void makes_a_path_harmless() {
        assertFalse(PortTrouble.notOpened("/dev/\u001b[2J", 2).contains("\u001b"));
    }

    @Test
    void lists_what_to_try_when_no_port_is_there() {
        List<String> tries = NothingAnswers.whatToTry(List.of());

        assertTrue(tries.get(0).contains("charge"), tries::toString);
        assertTrue(tries.get(1).contains("meter first"), tries::toString);
        assertTrue(tries.stream().anyMatch(sentence -> sentence.contains("bootloader")));
        assertTrue(tries.stream().anyMatch(sentence -> sentence.contains("Another program")));
        assertTrue(tries.get(tries.size() - 1).contains("flash probe-sketch"), tries::toString);
    }

    @Test
    void does_not_doubt_the_cable_of_a_port_that_is_there() {
        Port port = new Port(folder.resolve("none").toString(), "USB serial", Optional.of(new Port.Usb(1, 2, "")));

        List<String> tries = NothingAnswers.whatToTry(List.of(port));
        assertFalse(tries.stream().anyMatch(sentence -> sentence.contains("cable")), tries::toString);
        assertTrue(tries.stream().anyMatch(sentence -> sentence.contains("`lsof " + port.path() + "`")));
    }
}
