package buzzout.screen;

import com.googlecode.lanterna.input.KeyStroke;
import java.util.List;
import java.util.Optional;

/** Keystrokes to commands. Escape uncovers the board and never does anything else. */
final class Keys {
    private Keys() {}

    static Optional<Command> command(KeyStroke stroke, View view) {
        return switch (stroke.getKeyType()) {
            case Character ->
                stroke.isCtrlDown()
                        ? withControl(stroke.getCharacter())
                        : stroke.isAltDown() ? Optional.empty() : plain(stroke.getCharacter(), view);
            case ArrowLeft -> Optional.of(new Command.Move(-1, 0));
            case ArrowRight -> Optional.of(new Command.Move(1, 0));
            case ArrowUp -> Optional.of(new Command.Move(0, -1));
            case ArrowDown -> Optional.of(new Command.Move(0, 1));
            case Tab -> Optional.of(new Command.Choose(1));
            case ReverseTab -> Optional.of(new Command.Choose(-1));
            case PageDown -> Optional.of(new Command.Scroll(1));
            case PageUp -> Optional.of(new Command.Scroll(-1));
            case Enter -> press(view, view.subject());
            case Escape -> Optional.of(new Command.CloseHelp());
            case EOF -> Optional.of(new Command.Quit());
            default -> Optional.empty();
        };
    }

    private static Optional<Command> withControl(char letter) {
        return switch (letter) {
            case 'c' -> Optional.of(new Command.Quit());
            case 'l' -> Optional.of(new Command.Repaint());
            default -> Optional.empty();
        };
    }

    private static Optional<Command> plain(char letter, View view) {
        return switch (letter) {
            case 'q' -> Optional.of(new Command.Quit());
            case '?' -> Optional.of(new Command.ToggleHelp());
            case 'f' -> whilePressing(view, new Request.FlexCheck());
            case 'a' -> whilePressing(view, new Request.AllAtOnce());
            case 'b' -> Optional.of(new Command.ToggleBounce());
            case 'm' -> Optional.of(new Command.Mute());
            case 's' -> Optional.of(new Command.Flip());
            case 'n' -> whilePressing(view, new Request.NothingCame(view.subject()));
            case 'e' -> whilePressing(view, new Request.AllPressed());
            case 'u' -> view.takesBack() ? Optional.of(new Command.Ask(new Request.TakeBack())) : Optional.empty();
            case 'c' -> rollCall(view);
            case 'd' -> repaired(view);
            case 'p' -> press(view, view.selected());
            default -> Optional.empty();
        };
    }

    private static Optional<Command> rollCall(View view) {
        Request request = view.isCalling() ? new Request.LeaveRollCall() : new Request.BeginRollCall();
        return view.isPressing() && !view.focus().help() ? Optional.of(new Command.Ask(request)) : Optional.empty();
    }

    private static Optional<Command> press(View view, int key) {
        return view.setting().simulated() ? whilePressing(view, new Request.Press(key)) : Optional.empty();
    }

    /** The chosen finding is: any of its suspects may have been what was repaired. */
    private static Optional<Command> repaired(View view) {
        return view.chosen().filter(finding -> view.takesBack()).map(finding -> {
            List<String> codes = finding.suspects().stream()
                    .map(suspect -> suspect.fault().code(view.plan()))
                    .toList();
            return new Command.Ask(new Request.Repaired(codes.get(0), codes.subList(1, codes.size())));
        });
    }

    private static Optional<Command> whilePressing(View view, Request request) {
        return view.takesWords() ? Optional.of(new Command.Ask(request)) : Optional.empty();
    }
}
