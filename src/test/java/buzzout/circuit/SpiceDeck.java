package buzzout.circuit;

import buzzout.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A board's netlist as a deck for ngspice: one copy of the board for each pin that a sweep drives. */
final class SpiceDeck {
    /** The 1N4148 in public model files, as CHECKS.md section 2 has them. */
    static final List<String> MODELS =
            List.of("D(IS=2.52n N=1.752 RS=.568 CJO=4p TT=20n)", "D(IS=4.352n N=1.906 RS=.6458 CJO=.7048p TT=3.48n)");

    /** A red LED, near 1.7 V at 0.1 mA; judgement. */
    private static final String LED = "D(IS=5e-19 N=2)";

    private static final double DRIVER_OHMS = 25;
    private static final double WIRE_OHMS = 0.01;
    private static final Pattern LEVEL = Pattern.compile("v\\(d(\\d+)_pin(\\d+)\\) = (\\S+)");

    private final Plan plan;
    private final String netlist;
    private final BitSet held;
    private final double pullUpOhms;
    private final StringBuilder deck = new StringBuilder();
    private int parts;

    /** @param model of the key diodes */
    SpiceDeck(Plan plan, String netlist, BitSet held, double pullUpOhms, String model) {
        this.plan = plan;
        this.netlist = netlist;
        this.held = held;
        this.pullUpOhms = pullUpOhms;
        deck.append("a board, once for each driven pin\n");
        deck.append(".model key ").append(model).append('\n');
        deck.append(".model led ").append(LED).append('\n');
        deck.append(String.format(
                Locale.ROOT, "vcc supply 0 %.1f%n", plan.controller().supplyVolts()));
        // Nodes that nothing ties down must not make the matrix singular.
        deck.append(".options rshunt=1e12\n");
        for (int driven = 0; driven < plan.pins().size(); driven++) {
            board(driven);
        }
        deck.append(".control\nop\n");
        for (int driven = 0; driven < plan.pins().size(); driven++) {
            for (int reads = 0; reads < plan.pins().size(); reads++) {
                deck.append("print v(d" + driven + "_pin" + reads + ")\n");
            }
        }
        deck.append(".endc\n.end\n");
    }

    /** The level of each pin, in volts, while each is driven low. */
    double[][] volts(Path folder) throws IOException, InterruptedException {
        Path file = folder.resolve("board.cir");
        Files.writeString(file, deck);
        Process ngspice = new ProcessBuilder("ngspice", "-b", file.toString())
                .redirectError(folder.resolve("errors").toFile()) // Or it would break into the levels' lines.
                .start();
        String said = new String(ngspice.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        ngspice.waitFor();
        int pins = plan.pins().size();
        double[][] volts = new double[pins][pins];
        int found = 0;
        Matcher level = LEVEL.matcher(said);
        while (level.find()) {
            volts[Integer.parseInt(level.group(1))][Integer.parseInt(level.group(2))] =
                    Double.parseDouble(level.group(3));
            found++;
        }
        if (found != pins * pins) {
            throw new IOException("ngspice printed " + found + " of " + pins * pins + " levels:\n" + said
                    + Files.readString(folder.resolve("errors")));
        }
        return volts;
    }

    private void board(int driven) {
        String copy = "d" + driven + "_";
        int pin = 0;
        for (String line : netlist.lines().toList()) {
            String[] part = line.split(" ", -1);
            switch (part[0]) {
                case "pin", "spare" -> pin(copy, pin, part[2], pin++ == driven);
                case "wire" -> resistor(copy + part[1], copy + part[2], WIRE_OHMS);
                case "switch" -> {
                    if (held.get(plan.key(part[1]).orElseThrow().index())) {
                        resistor(copy + part[2], copy + part[3], WIRE_OHMS);
                    }
                }
                case "diode" -> diode(copy + part[1], copy + part[2], "key");
                case "joint", "rise" -> {}
                case "led" -> diode(copy + part[1], "0", "led");
                case "ground" -> resistor(copy + part[1], "0", WIRE_OHMS);
                default -> throw new IllegalArgumentException(line);
            }
        }
    }

    private void pin(String copy, int pin, String node, boolean driven) {
        resistor(copy + "pin" + pin, copy + node, WIRE_OHMS);
        resistor(copy + "pin" + pin, driven ? "0" : "supply", driven ? DRIVER_OHMS : pullUpOhms);
    }

    private void resistor(String node, String other, double ohms) {
        if (!node.equals(other)) {
            deck.append(String.format(Locale.ROOT, "R%d %s %s %.3f%n", ++parts, node, other, ohms));
        }
    }

    private void diode(String anode, String cathode, String model) {
        deck.append("D" + ++parts + " " + anode + " " + cathode + " " + model + "\n");
    }
}
