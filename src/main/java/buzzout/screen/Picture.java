package buzzout.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.graphics.BasicTextImage;
import com.googlecode.lanterna.graphics.TextImage;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A screen as it would look in a terminal of some size, drawn without one. */
final class Picture {
    private final TextImage image;

    private Picture(TextImage image) {
        this.image = image;
    }

    static Picture of(View view, int columns, int rows) {
        TextImage image = new BasicTextImage(new TerminalSize(columns, rows));
        Page.paint(view, image.newTextGraphics());
        return new Picture(image);
    }

    TextImage image() {
        return image;
    }

    /** Its characters, a line for each row, without trailing blanks. */
    String text() {
        return IntStream.range(0, image.getSize().getRows())
                .mapToObj(row -> IntStream.range(0, image.getSize().getColumns())
                        .mapToObj(column -> image.getCharacterAt(column, row).getCharacterString())
                        .collect(Collectors.joining())
                        .stripTrailing())
                .collect(Collectors.joining("\n", "", "\n"));
    }
}
