package buzzout.plan;

/** The plan that is built in, for the demo and for reading; here and not in a file, which takes longer to find. */
public final class ExamplePlan {
    public static final String QUAYSIDE_FILE_NAME = "quayside-46.toml";

    private static final String QUAYSIDE = """
            # The harbour radio club's keyboard: two halves of a plate, joined between T and Y.
            name = "Quayside 46"
            controller = "ATmega32U4"
            spare = "B7"  # the flying lead

            # Keys stand in solder order. A jumper bridges the gap between the halves.
            [rows]
            R1 = { pin = "D0", keys = "Esc Q W E R T Y U I O P Back", jumpers = ["T Y"] }
            R2 = { pin = "D1", keys = "Tab A S D F G H J K L ; '", jumpers = ["G H"] }
            R3 = { pin = "D2", keys = "Shift Z X C V B N M , . / Up", jumpers = ["B N"] }
            R4 = { pin = "D3", keys = "Ctrl Log Band Alt Space Enter Mode Left Down Right", jumpers = ["Space Enter"] }

            [columns]
            C1 = { pin = "F0", colour = "brown", keys = "Esc Tab Shift Ctrl" }
            C2 = { pin = "F1", colour = "red", keys = "Q A Z Log" }
            C3 = { pin = "D4", colour = "orange", keys = "W S X Band" }
            C4 = { pin = "D6", colour = "yellow", keys = "E D C Alt" }
            C5 = { pin = "D7", colour = "green", keys = "R F V" }
            C6 = { pin = "B4", colour = "blue", keys = "T G B Space" }
            C7 = { pin = "B5", colour = "violet", keys = "Y H N Enter" }
            C8 = { pin = "B6", colour = "grey", keys = "U J M" }
            C9 = { pin = "C6", colour = "white", keys = "I K , Mode" }
            C10 = { pin = "E6", colour = "black", keys = "O L . Left" }
            C11 = { pin = "B2", colour = "pink", keys = "P ; / Down" }
            C12 = { pin = "B3", colour = "turquoise", keys = "Back ' Up Right" }

            [layout]
            widths = { Space = 2, Enter = 2 }
            """;

    private ExamplePlan() {}

    /** Quayside 46: four rows by twelve columns, two keys of double width. */
    public static Plan quayside() {
        return PlanReader.read(QUAYSIDE, QUAYSIDE_FILE_NAME).plan().orElseThrow();
    }

    /** Its file. */
    public static String quaysideText() {
        return QUAYSIDE;
    }
}
