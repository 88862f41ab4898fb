package buzzout.plan;

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
        int[] points = value.codePoints().toArray();
        int start = 0;
        for (int i = 0; i <= points.length; i++) {
            if (i == points.length || isSpace(points[i])) {
                if (i > start) {
                    words.add(new Word(new String(points, start, i - start), spots.get(start)));
                }
                start = i + 1;
            }
        }
        return words;
    }

    private static boolean isSpace(int point) {
        return point == '\t' || point == '\n' || point == '\r' || Character.isSpaceChar(point);
    }
}
