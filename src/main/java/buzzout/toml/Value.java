package buzzout.toml;

import java.util.Collections;
import java.util.List;
import java.util.Map;

/** A value and where it begins. */
public sealed interface Value {
    Spot at();

    /** Such as {@code a number}. */
    String kind();

    /**
     * Text in quotes.
     *
     * @param spots where each of its code points stands
     */
    record Text(String text, List<Spot> spots, Spot at) implements Value {
        public Text {
            spots = List.copyOf(spots);
        }

        @Override
        public String kind() {
            return "text";
        }
    }

    /** Whole or not, infinite or not a number. */
    record Quantity(double number, Spot at) implements Value {
        @Override
        public String kind() {
            return "a number";
        }
    }

    /** True or false. */
    record Truth(boolean holds, Spot at) implements Value {
        @Override
        public String kind() {
            return "true or false";
        }
    }

    /** A date, a time or both, as written. */
    record Moment(String written, Spot at) implements Value {
        @Override
        public String kind() {
            return "a date or time";
        }
    }

    /** Values in a row, those of an array of tables among them. */
    record Listed(List<Value> values, Spot at) implements Value {
        public Listed {
            values = Collections.unmodifiableList(values);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /**
     * Settings by their names.
     *
     * @param settings in the order of the file
     */
    record Table(Map<String, Setting> settings, Spot at) implements Value {
        public Table {
            settings = Collections.unmodifiableMap(settings);
        }

        @Override
        public String kind() {
            return "a table";
        }
    }

    /**
     * A named value.
     *
     * @param at where its name stands; where the header does, if that is what names a table
     */
    record Setting(Spot at, Value value) {}
}
