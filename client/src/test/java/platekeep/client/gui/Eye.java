package platekeep.client.gui;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Window;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.accessibility.Accessible;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JSpinner;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import platekeep.client.plate.chart.ChartSurface;
import platekeep.model.draw.Spot;

/**
 * Runs inside the program that is driven and answers where a component is and what it says, over a socket of this
 * machine; it only looks and never acts. A question is a line, an answer lines of {@code key=value} (percent-encoded)
 * and an empty line.
 */
public final class Eye {
    private static final int MOST_ITEMS = 100;

    private Eye() {}

    /** Called by the virtual machine before the program's own start, with the file to write the port to. */
    public static void premain(String portFile) throws IOException {
        ServerSocket server = new ServerSocket(0, 8, InetAddress.getLoopbackAddress());
        Path file = Path.of(portFile);
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        Files.writeString(beside, Integer.toString(server.getLocalPort()));
        Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
        Thread thread = new Thread(() -> serve(server), "eye");
        thread.setDaemon(true);
        thread.start();
    }

    private static void serve(ServerSocket server) {
        while (true) {
            try (Socket socket = server.accept();
                    BufferedReader in =
                            new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
                    PrintWriter out =
                            new PrintWriter(new OutputStreamWriter(socket.getOutputStream(), StandardCharsets.UTF_8))) {
                String question = in.readLine();
                Map<String, String> answer = new LinkedHashMap<>();
                EventQueue.invokeAndWait(() -> answer.putAll(answer(question)));
                answer.forEach(
                        (key, value) -> out.print(key + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8) + "\n"));
                out.print("\n");
                out.flush();
            } catch (Exception e) {
                // whoever asked gets no answer and asks again until its time is over
                e.printStackTrace();
            }
        }
    }

    private static Map<String, String> answer(String question) {
        String[] words = question.split(" ");
        return switch (words[0]) {
            case "all" -> all();
            case "keyboard" -> keyboard();
            case "spot" -> spot(Integer.parseInt(words[1]), Integer.parseInt(words[2]));
            default -> named(words[1]);
        };
    }

    /** Every component that has a name and shows, with its text: for the report of a failure. */
    private static Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        for (Component component : components()) {
            if (component.getName() != null && component.isShowing()) {
                all.put(component.getName(), text(component) + (component.isEnabled() ? "" : " (disabled)"));
            }
        }
        return all;
    }

    /** Who has the keyboard; nothing while a window is on its way to or from the front. */
    private static Map<String, String> keyboard() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner == null || !owner.isShowing() || isBlocked(owner)
                ? Map.of()
                : Map.of("owner", owner.getName() + " " + owner.getClass().getSimpleName());
    }

    /** The middle of a cable's place on the chart, as far as it is in view. */
    private static Map<String, String> spot(int row, int index) {
        for (Component component : components()) {
            if (component instanceof ChartSurface chart && chart.isShowing()) {
                Rectangle place = chart.place(new Spot(row, index));
                Map<String, String> facts = facts(chart);
                where(chart, place.intersection(chart.getVisibleRect()), facts);
                return facts;
            }
        }
        return Map.of();
    }

    private static Map<String, String> named(String name) {
        Map<String, String> found = Map.of();
        for (Component component : components()) {
            if (name.equals(component.getName()) && (found.isEmpty() || component.isShowing())) {
                found = facts(component);
                if (component.isShowing()) {
                    return found;
                }
            }
        }
        return found;
    }

    private static List<Component> components() {
        List<Component> all = new ArrayList<>();
        for (Window window : Window.getWindows()) {
            if (window.isShowing()) {
                collect(window, all);
            }
        }
        return all;
    }

    private static void collect(Component component, List<Component> all) {
        all.add(component);
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                collect(child, all);
            }
        }
    }

    private static Map<String, String> facts(Component component) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("showing", Boolean.toString(component.isShowing()));
        facts.put("enabled", Boolean.toString(component.isEnabled()));
        facts.put("blocked", Boolean.toString(isBlocked(component)));
        facts.put("text", text(component));
        facts.put("focus", Boolean.toString(hasFocus(component)));
        if (component instanceof AbstractButton button) {
            facts.put("selected", Boolean.toString(button.isSelected()));
        }
        if (component.isShowing()) {
            Rectangle seen = component instanceof JComponent j
                    ? j.getVisibleRect()
                    : new Rectangle(component.getWidth(), component.getHeight());
            where(component, seen, facts);
            if (component instanceof JList<?> list) {
                items(list, facts);
            }
        }
        return facts;
    }

    private static void where(Component component, Rectangle part, Map<String, String> facts) {
        Point corner = component.getLocationOnScreen();
        facts.put("x", Integer.toString(corner.x + part.x));
        facts.put("y", Integer.toString(corner.y + part.y));
        facts.put("width", Integer.toString(part.width));
        facts.put("height", Integer.toString(part.height));
    }

    private static <T> void items(JList<T> list, Map<String, String> facts) {
        facts.put("chosen", Integer.toString(list.getSelectedIndex()));
        int size = list.getModel().getSize();
        facts.put("size", Integer.toString(size));
        Point corner = list.getLocationOnScreen();
        for (int i = 0; i < Math.min(size, MOST_ITEMS); i++) {
            T item = list.getModel().getElementAt(i);
            facts.put("item" + i, String.valueOf(item));
            Rectangle cell = list.getCellBounds(i, i).intersection(list.getVisibleRect());
            facts.put("cell" + i, (corner.x + cell.x + cell.width / 2) + " " + (corner.y + cell.y + cell.height / 2));
        }
    }

    private static String text(Component component) {
        if (component instanceof JTextComponent field) {
            return field.getText();
        }
        if (component instanceof AbstractButton button) {
            return String.valueOf(button.getText());
        }
        if (component instanceof JLabel label) {
            return String.valueOf(label.getText());
        }
        if (component instanceof JComboBox<?> box) {
            return String.valueOf(box.getSelectedItem());
        }
        if (component instanceof JSpinner spinner) {
            return ((JSpinner.DefaultEditor) spinner.getEditor()).getTextField().getText();
        }
        if (component instanceof Accessible accessible && accessible.getAccessibleContext() != null) {
            return String.valueOf(accessible.getAccessibleContext().getAccessibleDescription());
        }
        return "";
    }

    private static boolean hasFocus(Component component) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, component);
    }

    /** Whether a dialog lies over it that has to be answered first. */
    private static boolean isBlocked(Component component) {
        Window own = component instanceof Window window ? window : SwingUtilities.getWindowAncestor(component);
        for (Window window : Window.getWindows()) {
            if (window instanceof Dialog dialog && dialog.isShowing() && dialog.isModal() && !isOver(own, dialog)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isOver(Window window, Window under) {
        for (Window at = window; at != null; at = at.getOwner()) {
            if (at == under) {
                return true;
            }
        }
        return false;
    }
}
