package buzzout.probe;

import buzzout.plan.Plan;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What to tell the person about a probe's answers, and about none. */
final class Sentences {
    private Sentences() {}

    static String wentQuiet(String port) {
        return "The probe on " + port
                + " has gone quiet: it is hung or being reset; press its reset button or plug it in" + " again.";
    }

    static String startedAgain(String port) {
        return "The probe on " + port + " started again: a reset, a dip of its supply or a loose cable; it is being set"
                + " up anew.";
    }

    static String doesNotFollow(String port) {
        return "The probe on " + port
                + " says who it is but does not do as told: plug it in again, or flash probe-sketch" + " anew.";
    }

    static String noAnswer(String port, long garbledLines) {
        return garbledLines == 0
                ? "Nothing on " + port + " answers as a probe: flash probe-sketch onto the board, or name the probe's"
                        + " port with --port."
                : "What talks on " + port + " is not the probe sketch (" + garbledLines + " lines make no sense): flash"
                        + " probe-sketch onto the board, or name the probe's port with --port.";
    }

    static String otherProtocol(int protocol) {
        return "The probe speaks version " + protocol + " of the protocol and this program version "
                + ProbeMessage.PROTOCOL + ": flash the sketch that came with this program.";
    }

    static String tooManyPins(Plan plan, Identity identity) {
        return "The plan uses " + plan.pins().size() + " pins and the probe's " + identity.chip() + " sweeps at most "
                + identity.mostPins() + ": take a controller with more pins, or fewer rows and columns.";
    }

    /** Whether saying it again cannot help. */
    static boolean isRefusal(Plan plan, ProbeMessage.No no) {
        return switch (no.reason()) {
            case "twice" -> isTwice(plan, no.detail());
            case "sweeping" -> false;
            default -> !no.verb().equals("?") && !no.verb().equals("state");
        };
    }

    static String measuresNoRises(Identity identity) {
        return "The sketch on the probe, " + identity.sketch()
                + ", does not measure rise times: flash the one that came with this program.";
    }

    /** Why this command was refused. */
    static String refused(Plan plan, Identity identity, String command, ProbeMessage.No no) {
        return switch (no.verb() + " " + no.reason()) {
            case "add pin" ->
                "The probe's " + identity.chip() + " cannot offer pin " + no.detail() + ", which the plan"
                        + " gives to " + uses(plan, no.detail())
                        + ": move that lead to another pin, or correct the plan.";
            case "add twice" ->
                "The plan gives pin " + no.detail() + " to " + uses(plan, no.detail()) + ": each pin has one net.";
            case "add many" -> tooManyPins(plan, identity);
            case "settle range" ->
                command.equals(SettleTime.MEASURED.step().command())
                        ? measuresNoRises(identity)
                        : "The probe does not take this settle time: use one between 1 and 1000 microseconds.";
            default ->
                "The probe refused to " + no.verb() + " (" + (no.reason() + " " + no.detail()).strip()
                        + "): flash the sketch that came with this program.";
        };
    }

    private static boolean isTwice(Plan plan, String pin) {
        return plan.pins().stream().filter(pin::equals).count() > 1;
    }

    private static String uses(Plan plan, String pin) {
        String nets = plan.nets().stream()
                .filter(net -> net.pin().equals(pin))
                .map(net -> net.kind().word() + " " + net.name())
                .collect(Collectors.joining(" and "));
        String spare = plan.sparePin().filter(pin::equals).isPresent() ? "the flying lead" : "";
        return Stream.of(nets, spare).filter(use -> !use.isEmpty()).collect(Collectors.joining(" and "));
    }
}
