package buzzout.screen;

import java.awt.Frame;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;

/** Shows a session in a window, types into it, and takes its picture; prints what came of it. */
final class WindowBench {
    private static final long PATIENCE_NANOS = 20_000_000_000L;

    private WindowBench() {}

    /** Arguments: the file for the picture, and {@code q} or {@code close}: how to leave. */
    public static void main(String[] arguments) throws Exception {
        Optional<String> obstacle = BoardScreen.windowObstacle();
        if (obstacle.isPresent()) {
            System.out.println(obstacle.get());
            System.exit(2);
        }
        Bench bench = new Bench(Views.QUAYSIDE);
        Thread hands = new Thread(() -> hands(bench, arguments[0], arguments[1]), "hands");
        hands.setDaemon(true);
        hands.start();
        Setting setting = new Setting(Optional.of("Q-01"), Optional.empty(), new Look(true, false), true);
        System.out.println(BoardScreen.runInWindow(setting, bench, Signals.on()) + " after " + bench.asked());
        System.exit(0);
    }

    private static void hands(Bench bench, String picture, String way) {
        try {
            Robot robot = new Robot();
            await("the window", () -> Frame.getFrames().length > 0 && Frame.getFrames()[0].isShowing());
            Frame frame = Frame.getFrames()[0];
            Rectangle at = frame.getBounds();
            await("the board", () -> lit(robot.createScreenCapture(at)) > 3_000);
            robot.mouseMove(at.x + at.width / 2, at.y + at.height / 2);
            int before = lit(robot.createScreenCapture(at));
            type(robot, KeyEvent.VK_ENTER);
            await("Esc pressed", () -> bench.asked().size() == 1);
            type(robot, KeyEvent.VK_RIGHT);
            type(robot, KeyEvent.VK_P);
            await("Q pressed", () -> bench.asked().size() == 2);
            await("a change", () -> lit(robot.createScreenCapture(at)) != before);
            ImageIO.write(robot.createScreenCapture(at), "png", new File(picture));
            frame.setSize(700, 500);
            await(
                    "the new size",
                    () -> robot.createScreenCapture(at).getRGB(at.width - 30, at.height - 30)
                            == robot.createScreenCapture(at).getRGB(at.width - 5, at.height - 5));
            if (way.equals("q")) {
                type(robot, KeyEvent.VK_Q);
            } else {
                frame.dispatchEvent(new WindowEvent(frame, WindowEvent.WINDOW_CLOSING));
            }
        } catch (Exception e) {
            e.printStackTrace();
            System.exit(3);
        }
    }

    private static void type(Robot robot, int key) {
        robot.keyPress(key);
        robot.keyRelease(key);
    }

    /** How many of its points are not black. */
    private static int lit(BufferedImage picture) {
        int lit = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                if ((picture.getRGB(x, y) & 0xFFFFFF) != 0) {
                    lit++;
                }
            }
        }
        return lit;
    }

    private static void await(String what, BooleanSupplier holds) throws InterruptedException {
        long deadline = System.nanoTime() + PATIENCE_NANOS;
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() > deadline) {
                throw new IllegalStateException("waited in vain for " + what);
            }
            Thread.sleep(50);
        }
    }
}
