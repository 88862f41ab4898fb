package buzzout.screen;

import java.util.List;

/** What a person with both eyes on the board hears. Told apart by pitch and rhythm; by a bell, by how often it rings. */
public enum Tone {
    /** A key answered as planned. */
    GOOD(1, new Note(880, 70)),
    /** It answered otherwise, a held key dropped out, or the link went down. */
    WRONG(2, new Note(220, 110), new Note(0, 40), new Note(220, 160)),
    /** The word that nothing came has been taken. */
    NOTHING(3, new Note(392, 60), new Note(0, 40), new Note(330, 60)),
    /** A step is over: the quiet check, or the last key. */
    DONE(4, new Note(659, 80), new Note(880, 80), new Note(1175, 160));

    /**
     * A sine of one pitch, or a rest.
     *
     * @param hertz 0 for a rest
     */
    record Note(int hertz, int millis) {}

    private final int rings;
    private final List<Note> notes;

    Tone(int rings, Note... notes) {
        this.rings = rings;
        this.notes = List.of(notes);
    }

    /** How often a bell that has one pitch only rings for it. */
    int rings() {
        return rings;
    }

    List<Note> notes() {
        return notes;
    }
}
