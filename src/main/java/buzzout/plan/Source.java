package buzzout.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** The file's own characters, to find where in a text value a word stands. */
final class Source {
    /** Code points, line by line. */
    private final List<int[]> lines;

    Source(String text) {
        lines = Stream.of(text.split("\n", -1))
                .map(line -> line.codePoints().toArray())
                .toList();
    }

    /** A text value whose literal begins at a spot. */
    Text text(String value, Spot at) {
        int points = value.codePointCount(0, value.length());
        List<Spot> spots = spotsWithin(at);
        return new Text(value, spots.size() == points ? spots : Collections.nCopies(points, at), at);
    }

    /** The character at a spot, or a line's end. */
    int at(Spot spot) {
        int[] line = lines.get(spot.line() - 1);
        return spot.column() <= line.length ? line[spot.column() - 1] : '\n';
    }

    /** The spots of a one-line literal's characters, an escape counting as one; too few or many for other literals. */
    private List<Spot> spotsWithin(Spot at) {
        int[] line = lines.get(at.line() - 1);
        int quote = at(at);
        List<Spot> spots = new ArrayList<>();
        int i = at.column();
        while (i < line.length && line[i] != quote) {
            spots.add(new Spot(at.line(), i + 1));
            i += quote == '"' && line[i] == '\\' && i + 1 < line.length ? escapeLength(line[i + 1]) : 1;
        }
        return spots;
    }

    private static int escapeLength(int letter) {
        return switch (letter) {
            case 'x' -> 4;
            case 'u' -> 6;
            case 'U' -> 10;
            default -> 2;
        };
    }
}
