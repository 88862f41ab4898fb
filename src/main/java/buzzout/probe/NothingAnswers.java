package buzzout.probe;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Why no probe may answer, in the order in which to try: the cheapest and likeliest first. */
public final class NothingAnswers {
    static final String NO_PORT =
            "No USB serial port is there: plug the probe in, with a cable that carries data; `buzzout ports` lists ports.";

    private NothingAnswers() {}

    static String among(List<Port> asked) {
        return "No probe answers on "
                + asked.stream().map(Port::path).collect(Collectors.joining(", "))
                + ": flash probe-sketch onto the board, or name the probe's port with --port.";
    }

    /**
     * One sentence for each thing to try.
     *
     * @param ports what {@link SerialPorts#list} sees now
     */
    public static List<String> whatToTry(List<Port> ports) {
        List<Port> usb = ports.stream().filter(port -> port.usb().isPresent()).toList();
        List<String> tries = new ArrayList<>();
        if (usb.isEmpty()) {
            tries.add("Try another cable: many only charge and carry no data, and the port then never shows up.");
            tries.add("If the USB socket was wired by hand, D- and D+ may be swapped: the usual colours are red +5 V,"
                    + " white D-, green D+, black ground, but some cables differ, so check with the meter first.");
        }
        tries.add("The board may still be in its bootloader, as after flashing or a double reset: wait ten seconds, or"
                + " press reset once.");
        if (usb.isEmpty()) {
            tries.add(
                    "If the port shows up as `buzzout ports` lists it but without a USB identity, name it: --port PATH.");
        }
        for (Port port : usb) {
            PortTrouble.permission(port.path()).ifPresent(tries::add);
        }
        tries.add("Another program may have the port: close serial monitors and any other Buzzout"
                + (usb.isEmpty() || isWindows() ? "." : "; `lsof " + usb.get(0).path() + "` names it."));
        tries.add("Another sketch may be on the board: flash probe-sketch.");
        return tries;
    }

    private static boolean isWindows() {
        return System.getProperty("os.name", "").startsWith("Windows");
    }
}
