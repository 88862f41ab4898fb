package buzzout.screen;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Letters made of dots, five high, for text that is read from afar. Small letters look like capitals. */
final class BlockLetters {
    static final int HEIGHT = 5;

    private static final Map<Character, String[]> SHAPES = """
            A .###. #...# ##### #...# #...#
            B ####. #...# ####. #...# ####.
            C .#### #.... #.... #.... .####
            D ####. #...# #...# #...# ####.
            E ##### #.... ####. #.... #####
            F ##### #.... ####. #.... #....
            G .#### #.... #..## #...# .####
            H #...# #...# ##### #...# #...#
            I ### .#. .#. .#. ###
            J ..### ...#. ...#. #..#. .##..
            K #...# #..#. ###.. #..#. #...#
            L #.... #.... #.... #.... #####
            M #...# ##.## #.#.# #...# #...#
            N #...# ##..# #.#.# #..## #...#
            O .###. #...# #...# #...# .###.
            P ####. #...# ####. #.... #....
            Q .###. #...# #.#.# #..#. .##.#
            R ####. #...# ####. #..#. #...#
            S .#### #.... .###. ....# ####.
            T ##### ..#.. ..#.. ..#.. ..#..
            U #...# #...# #...# #...# .###.
            V #...# #...# #...# .#.#. ..#..
            W #...# #...# #.#.# ##.## #...#
            X #...# .#.#. ..#.. .#.#. #...#
            Y #...# .#.#. ..#.. ..#.. ..#..
            Z ##### ...#. ..#.. .#... #####
            0 .###. #..## #.#.# ##..# .###.
            1 .#. ##. .#. .#. ###
            2 ####. ....# .###. #.... #####
            3 ####. ....# .###. ....# ####.
            4 #..#. #..#. ##### ...#. ...#.
            5 ##### #.... ####. ....# ####.
            6 .###. #.... ####. #...# .###.
            7 ##### ...#. ..#.. .#... .#...
            8 .###. #...# .###. #...# .###.
            9 .###. #...# .#### ....# .###.
            ! # # # . #
            " #.# #.# ... ... ...
            # .#.#. ##### .#.#. ##### .#.#.
            $ .#### #.#.. .###. ..#.# ####.
            % #...# ...#. ..#.. .#... #...#
            & .##.. #..#. .##.# #..#. .##.#
            ' ## .# #. .. ..
            ( .# #. #. #. .#
            ) #. .# .# .# #.
            * ..... #.#.# .###. #.#.# .....
            + ..... ..#.. .###. ..#.. .....
            , .. .. .. ## .#
            - ... ... ### ... ...
            . .. .. .. ## ##
            / ....# ...#. ..#.. .#... #....
            : .. ## .. ## ..
            ; .. ## .. ## .#
            < ..# .#. #.. .#. ..#
            = ... ### ... ### ...
            > #.. .#. ..# .#. #..
            ? ####. ....# ..##. ..... ..#..
            @ .###. #.#.# #.### #.... .####
            [ ## #. #. #. ##
            \\ #.... .#... ..#.. ...#. ....#
            ] ## .# .# .# ##
            ^ .#. #.# ... ... ...
            _ ..... ..... ..... ..... #####
            ` #. .# .. .. ..
            { .## .#. ##. .#. .##
            | # # # # #
            } ##. .#. .## .#. ##.
            ~ ..... .#..# #.##. ..... .....
            """.lines().collect(
            Collectors.toMap(line -> line.charAt(0), line -> line.substring(2).split(" ")));

    private BlockLetters() {}

    /** Five rows of as many characters, {@code #} where there is a dot; nothing where a letter has no shape here. */
    static Optional<String[]> of(String text) {
        List<String[]> shapes = text.toUpperCase(Locale.ROOT)
                .chars()
                .mapToObj(letter -> Optional.ofNullable(SHAPES.get((char) letter)))
                .flatMap(Optional::stream)
                .toList();
        if (shapes.isEmpty() || shapes.size() != text.length()) {
            return Optional.empty();
        }
        String[] rows = new String[HEIGHT];
        for (int row = 0; row < HEIGHT; row++) {
            int at = row;
            rows[row] = shapes.stream().map(shape -> shape[at]).collect(Collectors.joining("."));
        }
        return Optional.of(rows);
    }
}
