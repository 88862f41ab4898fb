package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.Observation.Hands;
import java.util.BitSet;
import java.util.Optional;

/** Something tried on the board other than the press of a single key: keys held together, or a touch. */
sealed interface Trial {
    /** What a board then reads. */
    Reading reading(Circuit board);

    /** The nets that it is about, as a bit set. */
    long nets(Plan plan);

    /** As the beginning of a sentence: {@code with Q and W held together}. */
    String says(Plan plan);

    static Optional<Trial> of(Hands hands) {
        if (hands instanceof Hands.Together together) {
            BitSet held = new BitSet();
            together.keys().forEach(held::set);
            return Optional.of(new Together(held));
        } else if (hands instanceof Hands.Touch touch) {
            return Optional.of(new Touch(touch.net(), touch.joint()));
        }
        return Optional.empty();
    }

    /**
     * Keys held at the same time.
     *
     * @param held keys by index; never changed
     */
    record Together(BitSet held) implements Trial {
        @Override
        public Reading reading(Circuit board) {
            return board.read(held);
        }

        @Override
        public long nets(Plan plan) {
            return held.stream()
                    .mapToObj(plan.keys()::get)
                    .mapToLong(key -> 1L << key.row() | 1L << key.column())
                    .reduce(0, (some, more) -> some | more);
        }

        @Override
        public String says(Plan plan) {
            return "with "
                    + Because.names(held.stream()
                            .mapToObj(plan.keys()::get)
                            .map(Key::spoken)
                            .toList())
                    + " held together";
        }
    }

    /** The flying lead on a joint. */
    record Touch(int net, int joint) implements Trial {
        @Override
        public Reading reading(Circuit board) {
            return board.touching(net, joint).quiet();
        }

        @Override
        public long nets(Plan plan) {
            return 1L << net;
        }

        @Override
        public String says(Plan plan) {
            Key key = plan.keys().get(plan.nets().get(net).joints().get(joint));
            return "the flying lead on the " + key.spoken() + " joint of "
                    + plan.nets().get(net).name();
        }
    }
}
