package buzzout.report;

import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/**
 * USB HID usages of page 7, keyboard, by what is written on a key.
 *
 * <p>Codes from memory of the USB-IF's HID Usage Tables; a test holds them to the copy in {@code usb.ids}, which has
 * keypad 6 to 0 one too high (found there: two 8s).
 */
final class HidUsages {
    /** A code, then what may be written on its key, capitals or not; {@code 04 a} to {@code 27 0} are counted out. */
    private static final String TABLE = """
            28 Enter Return
            29 Esc Escape
            2A Backspace Back Bksp BkSpc
            2B Tab
            2C Space Spc
            2D - Minus
            2E = Equal
            2F [
            30 ]
            31 \\ Backslash
            33 ; Semicolon
            34 ' Quote
            35 ` Grave
            36 , Comma
            37 . Period Dot
            38 / Slash
            39 CapsLock Caps
            46 PrintScreen PrtSc PrtScr
            47 ScrollLock ScrLk
            48 Pause Break
            49 Insert Ins
            4A Home
            4B PageUp PgUp
            4C Delete Del
            4D End
            4E PageDown PgDn PgDown
            4F Right →
            50 Left ←
            51 Down ↓
            52 Up ↑
            53 NumLock NumLk
            54 KP/ Num/
            55 KP* Num*
            56 KP- Num-
            57 KP+ Num+
            58 KPEnter NumEnter
            59 KP1 Num1
            5A KP2 Num2
            5B KP3 Num3
            5C KP4 Num4
            5D KP5 Num5
            5E KP6 Num6
            5F KP7 Num7
            60 KP8 Num8
            61 KP9 Num9
            62 KP0 Num0
            63 KP. Num.
            65 Menu Application App
            E0 LCtrl LeftCtrl LControl
            E1 LShift LeftShift
            E2 LAlt LeftAlt
            E3 LGui LeftGui LWin LSuper LMeta
            E4 RCtrl RightCtrl RControl
            E5 RShift RightShift
            E6 RAlt RightAlt AltGr
            E7 RGui RightGui RWin RSuper RMeta
            """;

    /** Labels that leave open which hand's key is meant; the other hand's code is four higher. */
    private static final String EITHER_HAND = """
            E0 Ctrl Control
            E1 Shift
            E2 Alt
            E3 Gui Win Super Meta
            """;

    private static final int OTHER_HAND = 4;

    private static final Map<String, Integer> SURE = sure();
    private static final Map<String, Integer> BY_HAND = read(EITHER_HAND);

    private HidUsages() {}

    /** The usage that a key's label names; a label such as {@code Shift} is the left one on the board's left half. */
    static OptionalInt of(Plan plan, Key key) {
        String label = key.name().toLowerCase(Locale.ROOT);
        Integer sure = SURE.get(label);
        if (sure != null) {
            return OptionalInt.of(sure);
        }
        Integer left = BY_HAND.get(label);
        if (left == null) {
            return OptionalInt.empty();
        }
        double middle = plan.keys().stream()
                        .mapToDouble(each -> each.place().x() + each.place().width())
                        .max()
                        .orElse(0)
                / 2;
        return OptionalInt.of(key.place().middle() < middle ? left : left + OTHER_HAND);
    }

    private static Map<String, Integer> sure() {
        Map<String, Integer> codes = read(TABLE);
        for (int letter = 0; letter < 26; letter++) {
            codes.put(String.valueOf((char) ('a' + letter)), 0x04 + letter);
        }
        for (int digit = 1; digit <= 10; digit++) {
            codes.put(String.valueOf(digit % 10), 0x1E + digit - 1);
        }
        for (int function = 1; function <= 12; function++) {
            codes.put("f" + function, 0x3A + function - 1);
            codes.put("f" + (function + 12), 0x68 + function - 1);
        }
        return codes;
    }

    private static Map<String, Integer> read(String table) {
        Map<String, Integer> codes = new HashMap<>();
        table.lines().forEach(line -> {
            String[] words = line.split(" ", -1);
            for (int at = 1; at < words.length; at++) {
                codes.put(words[at].toLowerCase(Locale.ROOT), Integer.parseInt(words[0], 16));
            }
        });
        return codes;
    }
}
