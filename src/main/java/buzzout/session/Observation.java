package buzzout.session;

import buzzout.circuit.Pairs;
import java.util.Set;

/**
 * What conducted while the person did something; the evidence that a diagnosis weighs.
 *
 * @param hands what was done
 * @param seen every pair that conducted meanwhile, those of the quiet check included
 */
public record Observation(Hands hands, Pairs seen) {
    /** What the person's hands did. */
    public sealed interface Hands {
        /** Nothing was pressed. */
        record Off() implements Hands {}

        /** One key was pressed, the person's choice; the program does not know which. */
        record SomeKey() implements Hands {}

        /** The named key was meant; a slip of the finger is possible. */
        record Meant(int key) implements Hands {}

        /**
         * It was the named key's turn in a read-through; where nothing came the key may have been left out, and what
         * came may be a neighbour's.
         */
        record Read(int key) implements Hands {}

        /** This net read low whatever was driven, for a moment, which no key does; no answer to anything. */
        record NetFell(int net) implements Hands {}

        /** Every key was pressed at some time; what they closed is in the other observations. */
        record EveryKey() implements Hands {}

        /** The named key was held while the plate was flexed; nothing seen is a dropout. */
        record Flexed(int key) implements Hands {}

        /** The flying lead touched a joint, by its place in the net's solder order. */
        record Touch(int net, int joint) implements Hands {}

        /** These keys were held together. */
        record Together(Set<Integer> keys) implements Hands {
            public Together {
                keys = Set.copyOf(keys);
            }
        }
    }
}
