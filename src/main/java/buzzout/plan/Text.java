package buzzout.plan;

import buzzout.toml.Spot;
import java.util.ArrayList;
import java.util.List;

/**
 * A text value of the file.
 *
 * @param spots where each of its code points stands
 */
record Text(String value, List<Spot> spots, Spot at) {
    Text {
        spots = List.copyOf(spots);
    }

    Word whole() {
        return new Word(value, at);
    }

    /** Its words, which white space of any kind parts. */
    List<Word> words() {
        List<Word> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        int start = 0;
        for (int i = 0, at = 0; i < spots.size(); i++) {
            int point = value.codePointAt(at);
            at += Character.charCount(point);
            if (!isSpace(point)) {
                start = word.isEmpty() ? i : start;
                word.appendCodePoint(point);
            } else if (!word.isEmpty()) {
                words.add(new Word(word.toString(), spots.get(start)));
                word.setLength(0);
            }
        }
        if (!word.isEmpty()) {
            words.add(new Word(word.toString(), spots.get(start)));
        }
        return words;
    }

    private static boolean isSpace(int point) {
        return point == '\t' || point == '\n' || point == '\r' || Character.isSpaceChar(point);
    }
}
