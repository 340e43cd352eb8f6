package platekeep.client.gui;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.AWTError;
import java.awt.AWTException;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.IntBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import javax.imageio.ImageIO;
import javax.swing.KeyStroke;
import platekeep.client.command.Shell;

/** Presses the keys and moves the mouse of the display, and takes pictures of it. */
final class Fingers {
    /** Time between two events, so that a busy machine does not take two clicks for one double click or lose a key. */
    private static final int PACE = 12;

    private static final int DRAG_STEPS = 16;

    private static final AtomicInteger PICTURES = new AtomicInteger();

    /** What lies on which key of the common keyboard of the display server, with shift. */
    private static final Map<Character, Integer> SHIFTED = Map.of(
            '@', KeyEvent.VK_2,
            '#', KeyEvent.VK_3,
            '_', KeyEvent.VK_MINUS,
            ':', KeyEvent.VK_SEMICOLON);

    private static final Map<Character, Integer> PLAIN = Map.of(
            ' ', KeyEvent.VK_SPACE,
            '/', KeyEvent.VK_SLASH,
            '.', KeyEvent.VK_PERIOD,
            ',', KeyEvent.VK_COMMA,
            '-', KeyEvent.VK_MINUS,
            ';', KeyEvent.VK_SEMICOLON);

    private final Robot robot;

    Fingers() {
        try {
            robot = new Robot();
        } catch (AWTException e) {
            throw new IllegalStateException("the display takes no keys from a program", e);
        }
        robot.setAutoDelay(PACE);
    }

    /** Leaves a test out where the program cannot be driven from outside or native Git cannot be asked. */
    static void needDisplayAndGit() {
        assumeTrue(haveDisplay(), "there is no display here");
        assumeTrue(Shell.hasGit(), "native Git is not on this machine");
    }

    /** Whether there is a display that can be reached. */
    static boolean haveDisplay() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (AWTError | LinkageError e) {
            return false;
        }
    }

    void moveTo(Point at) {
        robot.mouseMove(at.x, at.y);
    }

    void click(Point at) {
        press(at);
        release();
    }

    void doubleClick(Point at) {
        click(at);
        press(at);
        release();
    }

    void press(Point at) {
        moveTo(at);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    }

    /** Presses at one point and lets go at another, with a hand that moves slowly enough to be taken for a drag. */
    void drag(Point from, Point to) {
        press(from);
        for (int step = 1; step <= DRAG_STEPS; step++) {
            moveTo(new Point(
                    from.x + (to.x - from.x) * step / DRAG_STEPS, from.y + (to.y - from.y) * step / DRAG_STEPS));
            robot.delay(3 * PACE);
        }
        robot.delay(20 * PACE);
        release();
    }

    void release() {
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    }

    /** Presses keys as {@link KeyStroke} names them, {@code ctrl shift Z}. */
    void key(String name) {
        KeyStroke stroke = KeyStroke.getKeyStroke(name);
        int with = stroke.getModifiers();
        hold(with, KeyEvent.VK_CONTROL, InputEvent.CTRL_DOWN_MASK);
        hold(with, KeyEvent.VK_ALT, InputEvent.ALT_DOWN_MASK);
        hold(with, KeyEvent.VK_SHIFT, InputEvent.SHIFT_DOWN_MASK);
        robot.keyPress(stroke.getKeyCode());
        robot.keyRelease(stroke.getKeyCode());
        letGo(with, KeyEvent.VK_SHIFT, InputEvent.SHIFT_DOWN_MASK);
        letGo(with, KeyEvent.VK_ALT, InputEvent.ALT_DOWN_MASK);
        letGo(with, KeyEvent.VK_CONTROL, InputEvent.CTRL_DOWN_MASK);
    }

    private void hold(int with, int key, int mask) {
        if ((with & mask) != 0) {
            robot.keyPress(key);
        }
    }

    private void letGo(int with, int key, int mask) {
        if ((with & mask) != 0) {
            robot.keyRelease(key);
        }
    }

    /** Types a text of letters, digits and a few signs. */
    void type(String text) {
        for (char c : text.toCharArray()) {
            boolean shift = Character.isUpperCase(c) || SHIFTED.containsKey(c);
            if (shift) {
                robot.keyPress(KeyEvent.VK_SHIFT);
            }
            int key = SHIFTED.getOrDefault(c, PLAIN.getOrDefault(c, (int) Character.toUpperCase(c)));
            robot.keyPress(key);
            robot.keyRelease(key);
            if (shift) {
                robot.keyRelease(KeyEvent.VK_SHIFT);
            }
        }
    }

    /** The dots of a part of the display, line by line. */
    IntBuffer dots(Rectangle part) {
        return IntBuffer.wrap(
                robot.createScreenCapture(part).getRGB(0, 0, part.width, part.height, null, 0, part.width));
    }

    /** Keeps a picture of the whole display beside the other results of the build, and tells where. */
    Path picture() {
        Path file = Path.of("target", "gui", "failure-" + PICTURES.incrementAndGet() + ".png");
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(
                    robot.createScreenCapture(
                            new Rectangle(Toolkit.getDefaultToolkit().getScreenSize())),
                    "png",
                    file.toFile());
        } catch (IOException e) {
            throw new IllegalStateException("no picture of the failure", e);
        }
        return file;
    }
}
